using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a month of a journal says, with every question of it judged in one family.</summary>
public sealed record MonthReview
{
    private MonthReview(
        MonthAnswers answers,
        FindingFamily family,
        IReadOnlyList<Bake> journal,
        MonthQuality quality,
        TargetHits? hits,
        Attempt<EvennessOfDividing> dividing)
    {
        Month = answers.Months.Month;
        Before = answers.Months.Before;
        Bakes = answers.Months.Bakes;
        Family = family;
        Scores = answers.Scores;
        Hits = hits;
        Dividing = dividing;
        DoughTemperature = MonthSummary.Of(Measures.DoughTemperature, Bakes);
        Friction = MonthSummary.Of(FrictionByBake.FrictionFactor, Bakes);
        BakeLoss = MonthSummary.Of(Measures.BakeLoss, Bakes);
        DoughTemperatureChart = MonthChart.Of(Measures.DoughTemperature, Bakes);
        RiseTimeChart = RiseTime.Ask(journal).Match(answer => MonthChart.Of(answer, Bakes), problem => problem);
        ByVolume = BestAndWorst.ByVolume(Bakes, journal);
        ByCrumb = BestAndWorst.ByCrumb(Bakes);
        Quality = quality;
        NextThings = BakeInsights.NextThings.Of(family, hits, quality);
    }

    /// <summary>The month, as 2026-10.</summary>
    public string Month { get; }

    /// <summary>The latest month before it that has bakes; null where there is none.</summary>
    public string? Before { get; }

    /// <summary>The month's bakes, in order of their days.</summary>
    public IReadOnlyList<Bake> Bakes { get; }

    /// <summary>Every question asked, those of <see cref="MonthAnswers"/> and those handed in, judged together.</summary>
    public FindingFamily Family { get; }

    /// <summary>What was scored and how far the judges agree; the questions about it are judged in <see cref="Family"/>.</summary>
    public ScoreAnswers Scores { get; }

    /// <summary>The dough's temperature: its middle, and its spread about that.</summary>
    public Attempt<MonthSummary> DoughTemperature { get; }

    /// <summary>Hits and misses of the dough temperature meant; null when none was given, or none logged.</summary>
    public TargetHits? Hits { get; }

    /// <summary>The friction factor; its values are differences of temperature.</summary>
    public Attempt<MonthSummary> Friction { get; }

    /// <summary>The bake loss.</summary>
    public Attempt<MonthSummary> BakeLoss { get; }

    /// <summary>How evenly doughs were divided.</summary>
    public Attempt<EvennessOfDividing> Dividing { get; }

    /// <summary>Dough temperature bake by bake; its signals are prompts to look, outside the family.</summary>
    public Attempt<MonthChart> DoughTemperatureChart { get; }

    /// <summary>Rise time against what the model expects, bake by bake; its signals likewise.</summary>
    public Attempt<MonthChart> RiseTimeChart { get; }

    /// <summary>The best and worst bakes by specific volume; null where they can't be told.</summary>
    public BestAndWorst? ByVolume { get; }

    /// <summary>The best and worst bakes by crumb score; null where they can't be told.</summary>
    public BestAndWorst? ByCrumb { get; }

    /// <summary>How well the month was logged.</summary>
    public MonthQuality Quality { get; }

    /// <summary>Three things to do next, the first first; fewer where there are no more.</summary>
    public IReadOnlyList<NextThing> NextThings { get; }

    /// <summary>Reviews a month: every question of <see cref="MonthAnswers"/>.</summary>
    /// <param name="journal">The journal; bakes after the month have no part in the review.</param>
    /// <param name="month">The month as 2026-10; empty for the journal's last.</param>
    /// <param name="target">The temperature that doughs were meant to have; null for none.</param>
    /// <exception cref="ArgumentException">The journal has no bakes in that month.</exception>
    public static MonthReview Of(Journal journal, string month, Temperature? target = null) => Of(journal, month, [], [], target);

    /// <summary>Reviews a month, with questions of one's own judged along.</summary>
    /// <param name="journal">The journal; bakes after the month have no part in the review.</param>
    /// <param name="month">The month as 2026-10; empty for the journal's last.</param>
    /// <param name="answers">Further answers to judge along, not yet judged; they come first.</param>
    /// <param name="open">Further questions that the journal can't answer.</param>
    /// <param name="target">The temperature that doughs were meant to have; null for none.</param>
    /// <exception cref="ArgumentException">
    /// The journal has no bakes in that month, or an answer's name is one of <see cref="MonthAnswers"/>.
    /// </exception>
    public static MonthReview Of(
        Journal journal,
        string month,
        IEnumerable<Finding> answers,
        IEnumerable<OpenQuestion> open,
        Temperature? target = null)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(open);
        var own = MonthAnswers.Of(journal, month);
        var (bakes, last) = (own.Months.Bakes, own.Months.Bakes[^1].BakedOn);
        return new MonthReview(
            own,
            FindingFamily.Judge([.. answers, .. own.Answers], [.. open, .. own.Open]),
            [.. journal.Bakes.Where(bake => bake.BakedOn <= last)],
            MonthQuality.Of(journal, bakes),
            target is { } meant ? TargetHits.Of(bakes, meant) : null,
            EvennessOfDividing.Of(bakes, journal.Loaves));
    }
}
