namespace BakeInsights.Inference;

/// <summary>Why data can't answer a question, and what would let them.</summary>
/// <param name="Kind">The kind of problem.</param>
/// <param name="Columns">The columns concerned, the one at fault first.</param>
/// <param name="Message">What is wrong: one sentence.</param>
/// <param name="Remedy">What would make the fit possible: one sentence.</param>
public sealed record FitProblem(FitProblemKind Kind, IReadOnlyList<string> Columns, string Message, string Remedy);
