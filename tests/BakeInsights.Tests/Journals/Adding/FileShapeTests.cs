using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public sealed class FileShapeTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, byte[], string> Encodings => new()
    {
        { "plain", "a,b\n1,é\n"u8.ToArray(), "utf-8" },
        { "with a mark", [0xEF, 0xBB, 0xBF, .. "a,b\n1,é\n"u8], "utf-8" },
        { "two bytes a letter, low first", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("a,b\n1,é\n")], "utf-16" },
        { "two bytes a letter, high first", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("a,b\n1,é\n")], "utf-16BE" },
        { "one byte a letter", [.. "a,b\n1,"u8, 0xE9, (byte)'\n'], "windows-1252" },
        { "cut inside a letter", [.. "a,b\n1,"u8, 0xC3], "windows-1252" },
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Encoding_is_found_from_the_bytes(string what, byte[] bytes, string name) =>
        Assert.Equal((what, name), (what, ShapeOf(bytes).Encoding.WebName));

    [Theory]
    [InlineData("a,b\n1,2\n", "\n", true)]
    [InlineData("a,b\r\n1,2\r\n", "\r\n", true)]
    [InlineData("a,b\r1,2\r", "\r", true)]
    [InlineData("a,b\r\n1,2\n", "\r\n", true)]
    [InlineData("a,b\r\n1,2", "\r\n", false)]
    [InlineData("a,b", "\n", false)]
    public void Line_end_is_that_of_the_header(string text, string lineEnd, bool endsItsLastLine)
    {
        var shape = ShapeOf(Encoding.UTF8.GetBytes(text));
        var wide = ShapeOf([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)]);

        Assert.Equal((lineEnd, endsItsLastLine), (shape.LineEnd, shape.EndsItsLastLine));
        Assert.Equal((lineEnd, endsItsLastLine), (wide.LineEnd, wide.EndsItsLastLine));
    }

    [Theory]
    [InlineData(',', "1,\"a,b\",\"c;\"\"d\"\"\",e f\n")]
    [InlineData(';', "1;\"a,b\";\"c;\"\"d\"\"\";e f\n")]
    [InlineData('\t', "1\t\"a,b\"\t\"c;\"\"d\"\"\"\te f\n")]
    public void Cells_are_parted_and_quoted_for_the_files_separator(char separator, string line) => Assert.Equal(
        line, Encoding.UTF8.GetString(new FileShape(new UTF8Encoding(), separator, "\n", true).BytesOf(["1", "a,b", "c;\"d\"", "e f"])));

    [Fact]
    public void Line_without_an_end_gets_one_first() => Assert.Equal(
        "\r\n1,2\r\n", Encoding.UTF8.GetString(ShapeOf("a,b\r\n0,1"u8.ToArray()).BytesOf(["1", "2"])));

    [Fact]
    public void Character_that_the_encoding_lacks_is_not_written_as_another() => Assert.Throws<EncoderFallbackException>(
        () => ShapeOf([.. "a\n"u8, 0xE9, (byte)'\n']).BytesOf(["漢"]));

    private FileShape ShapeOf(byte[] bytes)
    {
        var path = _folder.File("bakes.csv");
        File.WriteAllBytes(path, bytes);
        return FileShape.Of(path, ',');
    }
}
