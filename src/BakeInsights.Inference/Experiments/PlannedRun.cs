namespace BakeInsights.Inference;

/// <summary>One run of a planned experiment.</summary>
/// <param name="Order">When it is run, from 1.</param>
/// <param name="Block">The block, or in a split plot the whole plot, from 1; 1 throughout without blocks.</param>
/// <param name="Levels">The level of each factor, in the plan's order of factors.</param>
public sealed record PlannedRun(int Order, int Block, IReadOnlyList<string> Levels);
