namespace BakeInsights;

/// <summary>How long a step of the day is expected to take, and what that rests on.</summary>
/// <param name="Time">The time, with the soonest and latest that have to be reckoned with.</param>
/// <param name="Bakes">How many bakes are behind it.</param>
/// <param name="IsPredicted">
/// Whether it is the journal's fit at these settings, with a prediction interval of <see cref="ModelAnswer.Level"/>;
/// otherwise it is the median of the bakes, from the least to the most, or, without a bake, common practice.
/// </param>
/// <param name="Remarks">What to mind, a sentence each.</param>
public sealed record SheetRise(Duration Time, int Bakes, bool IsPredicted, IReadOnlyList<string> Remarks);
