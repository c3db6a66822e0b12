namespace BakeInsights;

/// <summary>A quantity as somebody wrote it, with the unit when the text has one: "76F", "2 1/4 tsp", "1 lb 3 oz".</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit that <paramref name="Value"/> is in, or null when the text holds a number only.</param>
public readonly record struct QuantityText(double Value, MeasureUnit? Unit)
{
    /// <summary>Reads a text of a file whose other numbers show no decimal mark.</summary>
    public static bool TryParse(string text, out QuantityText quantity) => TryParse(text, DecimalMark.NotShown, out quantity);

    /// <summary>
    /// Reads a number, a fraction, or both ("24.5", "24,5", "½", "3 1/2", "1.5E-05"), and after it at most one unit;
    /// several of them from large to small, given in the canonical unit ("1 lb 3 oz" in grams, "1 h 20" in minutes);
    /// and hours with minutes behind a colon ("1:15" is 75 minutes). Blanks, the minus and the fractions of Unicode
    /// count as plain ones. Anything else, and what the decimal mark leaves open ("1,250"), is not read.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="mark">The decimal mark of the file that the text is from.</param>
    /// <param name="quantity">What it says.</param>
    public static bool TryParse(string text, DecimalMark mark, out QuantityText quantity)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = KitchenText.Plain(text);
        if (ClockText.TryDuration(plain, out var minutes))
        {
            quantity = new QuantityText(minutes, MeasureUnits.Minute);
            return true;
        }

        var isNegative = plain is ['-', ..];
        var rest = (plain is ['-' or '+', ..] ? plain.AsSpan(1) : plain).Trim();
        var isRead = TryTakePart(ref rest, mark, out var first);
        quantity = first;
        if (isRead && !rest.IsEmpty)
        {
            isRead = TryAddParts(rest, mark, ref quantity);
        }

        quantity = isNegative ? quantity with { Value = -quantity.Value } : quantity;
        return isRead;
    }

    /// <summary>The decimal mark that a text shows by itself; not shown where its number could be read either way, or not at all.</summary>
    internal static DecimalMark Shown(string text)
    {
        if (!TryParse(text, DecimalMark.Point, out _))
        {
            return DecimalMark.NotShown;
        }

        var plain = KitchenText.Plain(text).AsSpan().TrimStart("+- ");
        return NumberText.Shows(plain[..AmountText.NumberLength(plain)]) ?? DecimalMark.NotShown;
    }

    private static bool TryAddParts(ReadOnlySpan<char> rest, DecimalMark mark, ref QuantityText quantity)
    {
        var sum = 0.0;
        var last = quantity;
        while (true)
        {
            if (last.Unit is not { Dimension: Dimension.Mass or Dimension.Volume or Dimension.Duration } unit)
            {
                return false;
            }

            sum += unit.ToCanonical(last.Value);
            if (rest.IsEmpty)
            {
                quantity = new QuantityText(sum, MeasureUnits.Canonical(unit.Dimension));
                return double.IsFinite(sum);
            }

            if (!TryTakePart(ref rest, mark, out var next) || !IsSmaller(next, unit, out last))
            {
                return false;
            }
        }
    }

    // Minutes need no unit behind hours: "1 h 20".
    private static bool IsSmaller(QuantityText next, MeasureUnit than, out QuantityText part)
    {
        part = next.Unit is null && than == MeasureUnits.Hour ? next with { Unit = MeasureUnits.Minute } : next;
        return part.Unit is { } unit && unit.Dimension == than.Dimension && unit.ToCanonical(1) < than.ToCanonical(1);
    }

    // An amount and the unit up to the next amount or the end.
    private static bool TryTakePart(ref ReadOnlySpan<char> text, DecimalMark mark, out QuantityText part)
    {
        part = default;
        if (!AmountText.TryTake(ref text, mark, out var amount))
        {
            return false;
        }

        text = text.TrimStart();
        var unit = text.IsEmpty ? null : UnitOf(text);
        if (text.IsEmpty || unit is not null)
        {
            part = new QuantityText(amount, unit);
            text = default;
            return true;
        }

        var next = text.IndexOfAnyInRange('0', '9');
        unit = next > 0 ? UnitOf(text[..next]) : null;
        part = new QuantityText(amount, unit);
        text = text[Math.Max(0, next)..];
        return unit is not null;
    }

    private static MeasureUnit? UnitOf(ReadOnlySpan<char> text) =>
        MeasureUnits.WithText(text.Trim().TrimEnd('.').ToString().Replace("° ", "°", StringComparison.Ordinal));
}
