namespace BakeInsights;

/// <summary>How well a month was logged.</summary>
/// <param name="Bakes">The month's bakes.</param>
/// <param name="Missing">The columns that bakes lack, the most often lacking first.</param>
/// <param name="SetAside">Rows set aside in the whole journal: a row without a day belongs to no month.</param>
/// <param name="Doubted">The notices about the month's bakes that were kept and are worth a second look.</param>
/// <param name="Rises">The bakes with a rise time.</param>
/// <param name="Spans">Of those, how many are known to lie between two looks.</param>
/// <param name="WideSpans">Of those, how many looks were far apart.</param>
/// <param name="ByCup">The bakes whose flour was measured by the cup.</param>
public sealed record MonthQuality(
    int Bakes,
    IReadOnlyList<MissingCells> Missing,
    int SetAside,
    IReadOnlyList<Notice> Doubted,
    int Rises,
    int Spans,
    int WideSpans,
    int ByCup)
{
    /// <summary>
    /// Two looks are far apart when more than this share of the time lies between them. Common practice, no source.
    /// </summary>
    public const double WidestSpan = LookInterval.WidestPct / 100;

    /// <summary>The one habit that would help the most bakes; null when nothing is lacking.</summary>
    public Habit? BestHabit => Habits().Where(habit => habit.Bakes > 0).MaxBy(habit => habit.Bakes);

    /// <summary>Looks at a month.</summary>
    public static MonthQuality Of(Journal journal, IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(bakes);
        var lines = bakes.Select(bake => bake.Origin).ToHashSet();
        return new MonthQuality(
            bakes.Count,
            NeededColumns.MissingFrom(bakes),
            journal.SetAside,
            [
                .. journal.Notices.Where(notice => notice.Gravity == Gravity.Doubted
                    && lines.Contains(new SourceLine(notice.File, notice.Line))),
            ],
            bakes.Count(bake => Measures.RiseTime.Of(bake) is not null),
            bakes.Count(bake => Span(bake) is not null),
            bakes.Count(bake => Span(bake) > WidestSpan),
            bakes.Count(bake => bake.FlourByCup));
    }

    // In the order in which ties are settled: what is lacking altogether costs more than what is uncertain.
    private IEnumerable<Habit> Habits()
    {
        if (Missing.Count > 0)
        {
            yield return new Habit($"Write down {Missing[0].Words} of every bake.", Missing[0].Count);
        }

        yield return new Habit("Read the notices of the rows that were set aside, and correct them.", SetAside);
        yield return new Habit("Look at the dough more often towards the end of its rise.", WideSpans);
        yield return new Habit("Weigh the flour instead of measuring it by the cup.", ByCup);
        yield return new Habit(
            "Look again at the cells that the check doubts.", Doubted.Select(notice => (notice.File, notice.Line)).Distinct().Count());
    }

    private static double? Span(Bake bake) =>
        bake[BakeColumns.RiseNotReady] is { } notReady && Measures.RiseTime.Of(bake) is { } ready and > 0
            ? (ready - notReady) / ready
            : null;
}
