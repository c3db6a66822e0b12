using System.Globalization;

namespace BakeInsights;

/// <summary>A number as somebody wrote it, with the unit when the text has one: "76F", "540 g", "-3.5".</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit in the text, or null when it holds a number only.</param>
public readonly record struct QuantityText(double Value, MeasureUnit? Unit)
{
    // No thousands sign: "1,250" is 1250 to one hand and 1.25 to another, and a guess would be silent.
    private const NumberStyles Accepted =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>
    /// Reads a decimal number with a point, in powers of ten too (1.5E-05, as spreadsheets and the canonical form write
    /// it), and after it at most one unit. Anything else (a decimal comma, two numbers, an unknown unit, a number too
    /// large for a double) is not read.
    /// </summary>
    public static bool TryParse(string text, out QuantityText quantity)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.AsSpan().Trim();
        var length = NumberLength(trimmed);
        quantity = default;
        if (!double.TryParse(trimmed[..length], Accepted, CultureInfo.InvariantCulture, out var value)
            || !double.IsFinite(value))
        {
            return false;
        }

        var rest = trimmed[length..].Trim();
        var unit = rest.IsEmpty ? null : MeasureUnits.WithText(rest.ToString());
        quantity = new QuantityText(value, unit);
        return rest.IsEmpty || unit is not null;
    }

    private static int NumberLength(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length
            && (char.IsAsciiDigit(text[length]) || text[length] is '.' or '-' or '+' || IsExponent(text[length..])))
        {
            length++;
        }

        return length;
    }

    private static bool IsExponent(ReadOnlySpan<char> text) =>
        text is ['e' or 'E', '+' or '-', >= '0' and <= '9', ..] or ['e' or 'E', >= '0' and <= '9', ..];
}
