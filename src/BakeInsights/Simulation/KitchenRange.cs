namespace BakeInsights;

/// <summary>A range that the virtual kitchen draws from, each value as likely as the others.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end, not below the lower; the same as it for something that never changes.</param>
public readonly record struct KitchenRange(double Low, double High)
{
    /// <summary>A range of one value.</summary>
    public static KitchenRange Only(double value) => new(value, value);
}
