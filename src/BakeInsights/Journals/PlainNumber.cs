using System.Buffers.Text;

namespace BakeInsights;

/// <summary>Reads a number that stands in a cell with nothing around it, as most cells of a journal do.</summary>
internal static class PlainNumber
{
    // A whole number of so many digits is below 2^53 and a power of ten up to 10^22 is exact, so that one division
    // rounds once, as it should (Clinger, "How to read floating point numbers accurately", 1990).
    private const int MostDigits = 15;

    private static readonly double[] PowersOfTen =
        [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14];

    /// <summary>The number, when all of the cell is one with a point as its decimal mark.</summary>
    public static bool TryParse(ReadOnlySpan<byte> cell, out double value) =>
        TryDigits(cell, out value) || (Utf8Parser.TryParse(cell, out value, out var used) && used == cell.Length);

    // Digits, and at most one point between them.
    private static bool TryDigits(ReadOnlySpan<byte> cell, out double value)
    {
        value = 0;
        if (cell.Length > MostDigits)
        {
            return false;
        }

        var (whole, point) = (0L, -1);
        for (var i = 0; i < cell.Length; i++)
        {
            var digit = (uint)(cell[i] - '0');
            if (digit <= 9)
            {
                whole = (whole * 10) + digit;
            }
            else if (cell[i] == '.' && point < 0 && i > 0 && i < cell.Length - 1)
            {
                point = i;
            }
            else
            {
                return false;
            }
        }

        value = point < 0 ? whole : whole / PowersOfTen[cell.Length - 1 - point];
        return cell.Length > 0;
    }
}
