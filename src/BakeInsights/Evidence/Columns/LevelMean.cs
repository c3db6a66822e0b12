namespace BakeInsights;

/// <summary>The mean result of the bakes of one level of a column, blocks and other causes as in the average bake used.</summary>
/// <param name="Level">The level as the journal spells it.</param>
/// <param name="Number">The level as a number in the column's canonical unit; null where it is a text.</param>
/// <param name="Count">How many of the bakes used have it.</param>
/// <param name="Mean">The mean in the result's canonical unit, with its own 95 % interval.</param>
public sealed record LevelMean(string Level, double? Number, int Count, Estimate Mean);
