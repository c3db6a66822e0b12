namespace BakeInsights;

/// <summary>One bake of a class.</summary>
/// <param name="Bench">Who bakes it.</param>
/// <param name="Round">In which round, from 1: a round has every combination once at each bench.</param>
/// <param name="Order">When at this bench, from 1.</param>
/// <param name="Levels">What it is to be, in the order of the plan's factors.</param>
public sealed record BenchBake(string Bench, int Round, int Order, IReadOnlyList<string> Levels);

/// <summary>The chance that a class finds the wished difference between two levels of a factor.</summary>
/// <param name="Factor">The factor.</param>
/// <param name="Power">The chance, by the F test of the factor at a p value of 0.05.</param>
/// <param name="BakesPerLevel">Bakes at each level.</param>
/// <param name="DegreesOfFreedom">What is left over for the scatter.</param>
/// <param name="IsBetweenRounds">Whether it is compared from round to round, since one setting serves all benches.</param>
public sealed record FactorPower(string Factor, double Power, int BakesPerLevel, int DegreesOfFreedom, bool IsBetweenRounds);
