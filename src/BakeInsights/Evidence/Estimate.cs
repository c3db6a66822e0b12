namespace BakeInsights;

/// <summary>A number with the interval that holds the true one with the confidence of <see cref="ModelAnswer.Level"/>.</summary>
/// <param name="Value">The estimate.</param>
/// <param name="Low">The interval's lower end; null when it has none.</param>
/// <param name="High">The interval's upper end; null when it has none.</param>
public sealed record Estimate(double Value, double? Low, double? High);
