namespace BakeInsights;

/// <summary>Amounts at the head of a text: a number, a fraction, or a number and a fraction ("24.5", "1/2", "3 1/2").</summary>
internal static class AmountText
{
    /// <summary>Takes the amount off the head of the text. A fraction's parts are whole, the lower one not zero.</summary>
    public static bool TryTake(ref ReadOnlySpan<char> text, DecimalMark mark, out double amount)
    {
        var length = NumberLength(text);
        var head = text[..length];
        var rest = text[length..];
        if (rest is ['/', ..])
        {
            return TryTakeFraction(ref text, out amount);
        }

        if (!NumberText.TryParse(head, mark, out amount))
        {
            return false;
        }

        text = rest;
        var fraction = rest.TrimStart();
        if (fraction.Length < rest.Length && head.IndexOfAnyExceptInRange('0', '9') < 0 && TryTakeFraction(ref fraction, out var part))
        {
            text = fraction;
            amount += part;
        }

        return true;
    }

    /// <summary>The length of the number at the head of the text, its powers of ten included; 0 where there is none.</summary>
    public static int NumberLength(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length
            && (char.IsAsciiDigit(text[length]) || text[length] is '.' or ',' || (length > 0 && IsExponent(text[length..]))))
        {
            length += text[length] is 'e' or 'E' ? 2 : 1;
        }

        return length;
    }

    private static bool TryTakeFraction(ref ReadOnlySpan<char> text, out double fraction)
    {
        fraction = 0;
        var slash = text.IndexOf('/');
        if (slash < 1)
        {
            return false;
        }

        var after = text[(slash + 1)..];
        var length = after.IndexOfAnyExceptInRange('0', '9') is var end && end < 0 ? after.Length : end;
        var rest = after[length..];
        if (!TryWhole(text[..slash], out var upper) || !TryWhole(after[..length], out var lower) || lower == 0
            || rest is ['/' or '.' or ',', ..])
        {
            return false;
        }

        text = rest;
        fraction = upper / lower;
        return true;
    }

    private static bool TryWhole(ReadOnlySpan<char> text, out double whole)
    {
        whole = 0;
        return text.IndexOfAnyExceptInRange('0', '9') < 0 && NumberText.TryParse(text, DecimalMark.Point, out whole);
    }

    private static bool IsExponent(ReadOnlySpan<char> text) =>
        text is ['e' or 'E', '+' or '-', >= '0' and <= '9', ..] or ['e' or 'E', >= '0' and <= '9', ..];
}
