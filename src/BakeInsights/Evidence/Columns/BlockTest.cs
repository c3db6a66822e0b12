using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Whether the bakes of a block, such as a flour or a baker, differ from those of others.</summary>
/// <param name="Block">The column's name.</param>
/// <param name="Levels">How many blocks there are.</param>
/// <param name="Test">The F test of the block, all else in the model.</param>
public sealed record BlockTest(string Block, int Levels, NestedComparison Test);
