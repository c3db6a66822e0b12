using System.Buffers.Text;
using System.Text;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class PlainNumberTests
{
    private static readonly Gen<string> Cells = Gen.OneOf(
        Gen.Select(Gen.Long[0, 999_999_999_999_999_999], Gen.Int[0, 20], (digits, point) => WithPoint($"{digits}", point)),
        Gen.Select(Gen.Int[0, 99_999], Gen.Int[0, 4], (digits, point) => WithPoint($"{digits:000}", point)),
        Gen.Char["0123456789.-+eE ,x"].Array[0, 8].Select(letters => new string(letters)));

    // The expected values are those of the platform's own parser, which rounds as IEEE 754 says.
    [Fact]
    public void A_cell_is_the_number_that_the_platform_reads_bit_for_bit() => Cells.Sample(cell =>
    {
        var bytes = Encoding.UTF8.GetBytes(cell);
        var isNumber = Utf8Parser.TryParse(bytes, out double expected, out var used) && used == bytes.Length;

        Assert.Equal(isNumber, PlainNumber.TryParse(bytes, out var value));
        Assert.True(!isNumber || BitConverter.DoubleToInt64Bits(expected) == BitConverter.DoubleToInt64Bits(value), cell);
    });

    private static string WithPoint(string digits, int point) => point < digits.Length ? digits.Insert(point, ".") : digits;
}
