namespace BakeInsights.Inference;

/// <summary>A value beyond which a diagnostic calls for a look.</summary>
/// <param name="Value">The value.</param>
/// <param name="Source">Where it was proposed, or that it is common practice.</param>
public sealed record Threshold(double Value, string Source);
