using System.Globalization;

namespace BakeInsights;

/// <summary>Decimal numbers as people write them, with a point or a comma before the parts and signs between thousands.</summary>
internal static class NumberText
{
    private const int DigitsInGroup = 3;

    /// <summary>
    /// Reads a number without a sign. "1,250" and "1.250" mean a thousand to one hand and one to another: the file's
    /// decimal mark decides, and where it doesn't they are not read. (A point without any comma in the file is the
    /// plain form.) Digits are ASCII; a number too large for a double is not read.
    /// </summary>
    public static bool TryParse(ReadOnlySpan<char> text, DecimalMark mark, out double value)
    {
        var exponent = text.IndexOfAny('e', 'E');
        var mantissa = exponent < 0 ? text : text[..exponent];
        var shown = Shows(mantissa);
        value = 0;
        if (shown is null || (exponent >= 0 && !IsExponent(text[(exponent + 1)..])))
        {
            return false;
        }

        var sign = shown switch
        {
            DecimalMark.NotShown => DecimalOf(mantissa, mark),
            DecimalMark.Comma => ',',
            _ => '.',
        };
        if (sign is null)
        {
            return false;
        }

        var thousands = sign == ',' ? "." : ",";
        var plain = text.ToString().Replace(thousands, "", StringComparison.Ordinal).Replace(',', '.');
        return double.TryParse(plain, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    /// <summary>
    /// The decimal mark that a number shows by itself: <see cref="DecimalMark.NotShown"/> for one without a mark, or
    /// with one that could as well stand before thousands; null for what is no number.
    /// </summary>
    public static DecimalMark? Shows(ReadOnlySpan<char> text)
    {
        var commas = text.Count(',');
        var points = text.Count('.');
        if (text.IndexOfAnyInRange('0', '9') < 0 || text.IndexOfAnyExcept("0123456789.,") >= 0)
        {
            return null;
        }

        return (commas, points) switch
        {
            (0, 0) => DecimalMark.NotShown,
            (1, 0) => IsGrouped(text, ',') ? DecimalMark.NotShown : DecimalMark.Comma,
            (0, 1) => IsGrouped(text, '.') ? DecimalMark.NotShown : DecimalMark.Point,
            (_, 0) => IsGrouped(text, ',') ? DecimalMark.Point : null,
            (0, _) => IsGrouped(text, '.') ? DecimalMark.Comma : null,
            (_, 1) when IsGrouped(text[..text.IndexOf('.')], ',') => DecimalMark.Point,
            (1, _) when IsGrouped(text[..text.IndexOf(',')], '.') => DecimalMark.Comma,
            _ => null,
        };
    }

    // The sign before the parts of "1,250", "1.250" or "1250"; null where it can't be told.
    private static char? DecimalOf(ReadOnlySpan<char> text, DecimalMark mark) => mark switch
    {
        DecimalMark.Point => '.',
        DecimalMark.Comma => ',',
        DecimalMark.NotShown when !text.Contains(',') => '.',
        _ when text.IndexOfAny(',', '.') < 0 => '.',
        _ => null,
    };

    // One to three digits without a leading zero, and after each sign three more: "1,250", not "0,750" nor "1234,567".
    private static bool IsGrouped(ReadOnlySpan<char> text, char sign)
    {
        var at = text.IndexOf(sign);
        if (at is < 1 or > DigitsInGroup || text[0] == '0')
        {
            return false;
        }

        foreach (var range in text[(at + 1)..].Split(sign))
        {
            var group = text[(at + 1)..][range];
            if (group.Length != DigitsInGroup || group.IndexOfAnyExceptInRange('0', '9') >= 0)
            {
                return false;
            }
        }

        return text[..at].IndexOfAnyExceptInRange('0', '9') < 0;
    }

    private static bool IsExponent(ReadOnlySpan<char> text)
    {
        var digits = text is ['+' or '-', ..] ? text[1..] : text;
        return !digits.IsEmpty && digits.IndexOfAnyExceptInRange('0', '9') < 0;
    }
}
