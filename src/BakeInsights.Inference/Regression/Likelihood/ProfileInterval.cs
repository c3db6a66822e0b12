namespace BakeInsights.Inference;

/// <summary>A confidence interval found by profiling. An end that the data don't bound is null.</summary>
/// <param name="Low">The lower end, in the unit of the quantity; null if every lower value is as good.</param>
/// <param name="High">The upper end, in the unit of the quantity; null if every higher value is as good.</param>
public readonly record struct ProfileInterval(double? Low, double? High)
{
    /// <summary>Whether the interval holds a value.</summary>
    public bool Contains(double value) => !(value < Low || value > High);
}
