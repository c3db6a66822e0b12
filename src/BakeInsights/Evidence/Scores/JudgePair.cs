using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How far two judges agree beyond chance.</summary>
/// <param name="First">One judge.</param>
/// <param name="Second">The other.</param>
/// <param name="Kappa">
/// Weighted kappa, a disagreement counting by its squared distance on the scale: with these weights kappa is, for many
/// bakes, an intraclass correlation (Fleiss and Cohen 1973, Educational and Psychological Measurement 33, 613-619).
/// </param>
public sealed record JudgePair(string First, string Second, Kappa Kappa);
