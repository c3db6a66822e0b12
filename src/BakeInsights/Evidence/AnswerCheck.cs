namespace BakeInsights;

/// <summary>A look at whether an answer can be trusted.</summary>
/// <param name="Name">A short fixed name, for programs.</param>
/// <param name="Value">The number looked at.</param>
/// <param name="Passed">Whether it is as it should be.</param>
/// <param name="Statement">What was seen, one sentence.</param>
public sealed record AnswerCheck(string Name, double Value, bool Passed, string Statement);
