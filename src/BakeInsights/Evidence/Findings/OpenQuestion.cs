namespace BakeInsights;

/// <summary>A question that the journal can't answer at all.</summary>
/// <param name="Name">A fixed name for programs, such as <c>rise_time.dough_temperature</c>.</param>
/// <param name="Words">The question, one sentence.</param>
/// <param name="Reason">Why it can't, one or two sentences.</param>
/// <param name="NextStep">Which bakes would answer it, one sentence.</param>
public sealed record OpenQuestion(string Name, string Words, string Reason, string NextStep);
