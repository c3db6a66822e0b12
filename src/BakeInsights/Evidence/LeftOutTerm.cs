namespace BakeInsights;

/// <summary>A term that the journal can't support in a model, and why.</summary>
/// <param name="Name">The term.</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record LeftOutTerm(string Name, string Reason);
