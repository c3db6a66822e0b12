namespace BakeInsights;

/// <summary>Numbers in a °C column that look as if they were read off a °F scale.</summary>
internal static class WrittenCelsius
{
    /// <summary>
    /// What a cell would be in °C if its number were in °F; null when the cell or its column does not take it for °C
    /// without saying so itself, or when the result is not usual either.
    /// </summary>
    public static double? Fahrenheit(ColumnBinding binding, string text, UsualRange range)
    {
        if (binding.Unit != MeasureUnits.Celsius || !QuantityText.TryParse(text, out var quantity) || quantity.Unit is not null)
        {
            return null;
        }

        var celsius = MeasureUnits.Fahrenheit.ToCanonical(quantity.Value);
        return celsius >= range.Low && celsius <= range.High ? celsius : null;
    }
}
