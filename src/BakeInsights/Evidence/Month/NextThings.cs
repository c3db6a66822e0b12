namespace BakeInsights;

/// <summary>
/// Ranks what to do next, by a rule of our own (docs/month.md): a habit whose lack costs a quarter of the month's bakes
/// or more; a target missed in half of them or more; hints, the clearest first; questions that can't be answered;
/// questions that the journal can't tell yet; findings; any other habit. One of each kind first, so that one kind does
/// not fill all places; then the rest in the same order. Nothing is said twice.
/// </summary>
internal static class NextThings
{
    private const int Most = 3;
    private const double CostlyShare = 0.25;
    private const double MissedShare = 0.5;

    /// <summary>The three that come first; fewer where there are no more.</summary>
    public static IReadOnlyList<NextThing> Of(FindingFamily family, TargetHits? hits, MonthQuality quality)
    {
        var habit = quality.BestHabit is { } best
            ? new NextThing(best.Words, $"it would have helped {MonthWords.Bakes(best.Bakes)}")
            : null;
        var isCostly = quality.BestHabit?.Bakes >= CostlyShare * quality.Bakes;
        var missed = hits is not null && hits.Hits.Count <= MissedShare * hits.Count && hits.Count > 0;
        IReadOnlyList<NextThing>[] kinds =
        [
            habit is not null && isCostly ? [habit] : [],
            missed
                ? [new NextThing(
                    "Set the water's temperature by the friction factor before each bake.",
                    $"{hits!.Count - hits.Hits.Count} of {MonthWords.Bakes(hits.Count)} missed the dough temperature they were meant to have")]
                : [],
            [.. Answers(family, answer => answer.Strength == Strength.Hint, "a hint, not borne out yet")],
            [.. family.Open.Select(open => new NextThing(open.NextStep, $"can't be answered: {open.Words}"))],
            [.. Answers(family, answer => answer.Strength == Strength.Open, "the journal can't tell yet")],
            [.. Answers(family, answer => answer.IsFinding, "a finding")],
            habit is not null && !isCostly ? [habit] : [],
        ];
        return
        [
            .. kinds.SelectMany(kind => kind.Take(1)).Concat(kinds.SelectMany(kind => kind.Skip(1)))
                .DistinctBy(thing => thing.Words)
                .Take(Most),
        ];
    }

    private static IEnumerable<NextThing> Answers(FindingFamily family, Func<Finding, bool> which, string why) => family.Answers
        .Where(which)
        .OrderBy(answer => answer.PValue)
        .Select(answer => new NextThing(answer.NextStep, $"{why}: {answer.Question}"));
}
