namespace BakeInsights;

/// <summary>What a judge gave a bake, and what the others gave it.</summary>
/// <param name="Judge">Who.</param>
/// <param name="Bake">Which bake.</param>
/// <param name="Own">The judge's score, the mean over the loaves of the bake.</param>
/// <param name="Others">The mean of the other judges' scores of the same bake.</param>
public sealed record JudgePoint(string Judge, Bake Bake, double Own, double Others);
