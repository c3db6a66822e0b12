namespace BakeInsights.Inference;

/// <summary>A bounded interval, ends included.</summary>
/// <param name="Low">The lower end, in the unit of the quantity.</param>
/// <param name="High">The upper end, in the unit of the quantity.</param>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>Whether the interval holds a value.</summary>
    public bool Contains(double value) => Low <= value && value <= High;

    /// <summary>The interval that reaches equally far to both sides of a centre.</summary>
    internal static Interval Around(double centre, double halfWidth) => new(centre - halfWidth, centre + halfWidth);
}
