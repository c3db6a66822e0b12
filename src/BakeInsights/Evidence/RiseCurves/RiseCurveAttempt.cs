using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One dough's rise: its curve, or why there is none.</summary>
/// <param name="BakeId">The bake.</param>
/// <param name="Stage">Which rise; null where it was not written.</param>
/// <param name="Outcome">The answer or the problem.</param>
public sealed record RiseCurveAttempt(string BakeId, RiseStage? Stage, Attempt<RiseCurveAnswer> Outcome);
