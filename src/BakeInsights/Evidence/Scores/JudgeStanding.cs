namespace BakeInsights;

/// <summary>How one judge scored beside the others.</summary>
/// <param name="Judge">Who.</param>
/// <param name="Bakes">How many bakes the judge scored together with another.</param>
/// <param name="Shift">
/// By how many points the judge's scores of these bakes lie above the mean of the others' (below, where negative).
/// </param>
public sealed record JudgeStanding(string Judge, int Bakes, double Shift);
