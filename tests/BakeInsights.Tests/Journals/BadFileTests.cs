using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Files that can't be read at all: what the reader says of each, word for word.</summary>
public sealed class BadFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Path_that_leads_nowhere() => Refuses(
        _folder.File("nowhere.csv"),
        "There is no such file or folder.",
        "Check the spelling, or start a journal with 'bakeinsights new'.");

    [Fact]
    public void Folder_without_a_file_of_bakes()
    {
        _folder.Write("loaves.csv", "bake_id\n");

        Refuses(_folder.Path, "The folder has no bakes*.csv in it.", "Name the folder of a journal, or one CSV file of bakes.");
    }

    [Fact]
    public void Empty_file() => Refuses(
        _folder.Write("bakes.csv", ""), "The file is empty.", "It needs a header line and a line for each bake.");

    [Fact]
    public void Bytes_that_are_not_text() => Refuses(
        WriteBytes("baked_on\n2026-10-01\0\n"u8.ToArray()),
        "The file holds bytes that are not text in UTF-8.",
        "Save the table as CSV (UTF-8) and read that.");

    [Fact]
    public void Text_in_two_bytes_a_letter() => Refuses(
        WriteBytes([0xFF, 0xFE, .. System.Text.Encoding.Unicode.GetBytes("baked_on\n2026-10-01\n")]),
        "The file holds bytes that are not text in UTF-8.",
        "Save the table as CSV (UTF-8) and read that.");

    [Fact]
    public void Workbook() => Refuses(
        WriteBytes([.. "PK\u0003\u0004"u8, 20, 0, 6, 0]),
        "This is a workbook or an archive, not a CSV file.",
        "Save the sheet as CSV (UTF-8) and read that.");

    [Theory]
    [InlineData("2026-10-01,500,325\n")]
    [InlineData("Bakes of October\nbake_id,baked_on\n")]
    [InlineData("bake_id,\"baked_on,notes\na,2026-10-01,\n")]
    [InlineData("\n\n")]
    [InlineData("\uFEFF")]
    public void File_without_a_header_of_bakes(string text) => Refuses(
        _folder.Write("bakes.csv", text),
        "The first line has no column baked_on, so it is not the header of a table of bakes.",
        "Start the file with a line of column names; 'bakeinsights new' writes one to copy.");

    [Theory]
    [InlineData(';', "';'")]
    [InlineData('\t', "a tab")]
    [InlineData('|', "'|'")]
    public void Another_separator(char separator, string named) => Refuses(
        _folder.Write("bakes.csv", $"bake_id,baked_on,flour_g\na,2026-10-01,500\n".Replace(',', separator)),
        $"The cells are separated by {named}, not by a comma.",
        "Save the table as CSV with commas.");

    [Fact]
    public void Line_too_long_to_be_a_bake() => Refuses(
        _folder.Write("bakes.csv", "baked_on,notes\n2026-10-01," + new string('x', 1 << 21) + "\n"),
        "A line is longer than 1024 KiB.",
        "See that this is a journal of bakes.");

    [Fact]
    public void One_bad_file_of_a_folder_is_named_with_its_path()
    {
        _folder.Write("bakes-1.csv", "baked_on\n2026-10-01\n");
        var bad = _folder.Write("bakes-2.csv", "");

        var failure = Assert.Throws<JournalFileException>(() => Journal.Read(_folder.Path));

        Assert.Equal(bad, failure.Path);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void Blank_path_is_a_programming_error(string path) => Assert.Throws<ArgumentException>(() => Journal.Read(path));

    private static void Refuses(string path, string reason, string remedy)
    {
        var failure = Assert.Throws<JournalFileException>(() => Journal.Read(path));

        Assert.Equal($"{path}: {reason} {remedy}", failure.Message);
        Assert.Equal((path, reason, remedy), (failure.Path, failure.Reason, failure.Remedy));
    }

    private string WriteBytes(byte[] bytes)
    {
        var path = _folder.File("bakes.csv");
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
