namespace BakeInsights;

/// <summary>What to say of a number that its column can't mean: what it would be, if that can be told.</summary>
internal static class OutOfRangeRemark
{
    /// <summary>The notice about a cell.</summary>
    /// <param name="at">Where it stands.</param>
    /// <param name="binding">Its column.</param>
    /// <param name="text">The cell.</param>
    /// <param name="value">What was read of it, in the column's canonical unit.</param>
    public static Notice Of(SourceLine at, ColumnBinding binding, string text, double value)
    {
        var column = (QuantityColumn)binding.Column!;
        if (UsualRanges.Of(column) is { } range)
        {
            if (WrittenCelsius.Fahrenheit(binding, text, range) is { } asFahrenheit)
            {
                return Notices.FahrenheitLikely(at, binding.Header, text, column, value, asFahrenheit);
            }

            if (Moved(binding, text, range) is { } meant)
            {
                return Notices.DecimalSlip(at, column, binding.Header, text, value, meant);
            }
        }

        return Notices.OutOfRange(at, column, binding.Header, text, value);
    }

    // The point is moved in the number as written: 760 °F is 76.0 °F, whatever that is in °C.
    private static double? Moved(ColumnBinding binding, string text, UsualRange range)
    {
        if (!QuantityText.TryParse(text, out var quantity) || (quantity.Unit ?? binding.Unit) is not { } unit)
        {
            return null;
        }

        return DecimalSlip.Of(move => unit.ToCanonical(quantity.Value * move) is var value && value >= range.Low && value <= range.High)
            is { } slip
            ? unit.ToCanonical(quantity.Value * slip)
            : null;
    }
}
