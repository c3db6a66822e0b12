using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One coefficient of an answer.</summary>
/// <param name="Name">The term.</param>
/// <param name="Unit">The unit of the estimate.</param>
/// <param name="Coefficient">The estimate with its uncertainty.</param>
public sealed record AnswerTerm(string Name, string Unit, Term Coefficient);
