namespace BakeInsights;

/// <summary>A bake among the month's best or worst.</summary>
/// <param name="Bake">Which.</param>
/// <param name="Value">Its result.</param>
/// <param name="Reasons">The settings that the numbers make a likely reason; empty when no logged cause explains it.</param>
public sealed record RankedBake(Bake Bake, double Value, IReadOnlyList<LikelyReason> Reasons);
