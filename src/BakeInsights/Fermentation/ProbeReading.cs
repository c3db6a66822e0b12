namespace BakeInsights;

/// <summary>One reading of a probe in a dough.</summary>
/// <param name="Minutes">Minutes since mixing ended, or any other start.</param>
/// <param name="At">The dough's temperature.</param>
public readonly record struct ProbeReading(double Minutes, Temperature At);
