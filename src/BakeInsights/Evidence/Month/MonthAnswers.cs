namespace BakeInsights;

/// <summary>
/// Every question of a month, asked and not yet judged: what moved rise, proof, loaf and scores, how groups and bakers
/// differ, what goes with the journal's own columns, and what changed. They are one family; docs/month.md lists them.
/// </summary>
public sealed class MonthAnswers
{
    private MonthAnswers(TwoMonths months, ScoreAnswers scores, Asked asked)
    {
        Months = months;
        Scores = scores;
        Answers = asked.Answers;
        Open = asked.Open;
    }

    /// <summary>The answers, not yet judged (<see cref="FindingFamily.Judge"/>).</summary>
    public IReadOnlyList<Finding> Answers { get; }

    /// <summary>The questions that the month can't answer.</summary>
    public IReadOnlyList<OpenQuestion> Open { get; }

    /// <summary>What was scored and how far the judges agree; its answers are among <see cref="Answers"/>.</summary>
    public ScoreAnswers Scores { get; }

    internal TwoMonths Months { get; }

    /// <summary>Asks them.</summary>
    /// <param name="journal">The journal; bakes after the month have no part in it.</param>
    /// <param name="month">The month as 2026-10; empty for the journal's last.</param>
    /// <exception cref="ArgumentException">The journal has no bakes in that month.</exception>
    public static MonthAnswers Of(Journal journal, string month)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var months = TwoMonths.Of(journal, month);
        var causes = CauseAnswers.Of(months.Bakes);
        var scores = ScoreAnswers.Of(months.Bakes, journal.Scores, journal.Attributes);
        var asked = new Asked();
        asked.Add(causes.Answers, causes.Open);
        asked.Add(scores.Answers, scores.Open);
        MonthGroups.Ask(asked, months.Bakes);
        MonthColumns.Ask(asked, months.Bakes);
        MonthBefore.Ask(asked, months);
        MonthDrift.Ask(
            asked, "friction_factor.drift", FrictionByBake.FrictionFactor, months.Bakes,
            "Keep mixing time, speed and batch size the same, and take the friction factor from the last few bakes.");
        MonthDrift.Ask(
            asked, "bake_loss.drift", Measures.BakeLoss, months.Bakes,
            "Check the oven's temperature, and weigh every loaf equally long out of the oven.");
        return new MonthAnswers(months, scores, asked);
    }
}
