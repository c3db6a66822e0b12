namespace BakeInsights.Inference;

/// <summary>One coefficient by prior, by data, and by both.</summary>
/// <param name="Name">The column.</param>
/// <param name="Prior">What was known before; null if nothing was stated.</param>
/// <param name="DataAlone">
/// What the data say by themselves: Student's distribution about the least-squares estimate.
/// </param>
/// <param name="Together">What both say together.</param>
/// <param name="Conflict">Whether this prior and the data disagree; null without a prior.</param>
public sealed record PriorTerm(
    string Name, Belief? Prior, Belief DataAlone, Belief Together, PriorConflict? Conflict);
