namespace BakeInsights.Reports;

/// <summary>A month's review, to read: findings first, then every other question, and what to do next last.</summary>
public static class MonthReviewView
{
    /// <summary>The review.</summary>
    /// <param name="review">The review.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(MonthReview review, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(review);
        var figures = new Figures(units);
        return new View(
        [
            new ViewHeading($"The month {review.Month}"),
            new ViewParagraph(Asked(review)),
            Findings(review, figures),
            .. Others(review, figures),
            .. ScoresView.Blocks(review.Scores, review.Family, figures),
            .. MonthNumberBlocks.Of(review, figures),
            .. MonthBakeBlocks.Of(review, figures),
            .. MonthQualityBlocks.Of(review.Quality),
            new ViewHeading("What to bear in mind"),
            new ViewList(Caveats(review)),
            .. MonthPromptBlocks.Of(review),
            new ViewHeading("Three things to do next"),
            new ViewList([.. review.NextThings.Select(thing => $"{thing.Words} ({thing.Why.TrimEnd('.', '?')}.)")]),
        ]);
    }

    private static string Asked(MonthReview review)
    {
        var asked = JournalView.Count(review.Family.Answers.Count, "question");
        return $"{JournalView.Count(review.Bakes.Count, "bake")}. {asked} could be asked of the journal and were counted together, so that "
            + "the chance of any false finding among them is at most 5 %; "
            + $"{JournalView.Count(review.Family.Open.Count, "question")} had to stay open.";
    }

    private static ViewBlock Findings(MonthReview review, Figures figures) => review.Family.Findings.Count == 0
        ? new ViewParagraph("No answer stands with all questions counted: there is no finding this month.")
        : new ViewList([.. review.Family.Findings.Select(finding => FindingWords.Sentence(finding, figures))]);

    private static IEnumerable<ViewBlock> Others(MonthReview review, Figures figures)
    {
        List<Finding> others = [.. review.Family.Answers.Where(answer => !answer.IsFinding && !IsAboutScores(review, answer.Name))];
        List<OpenQuestion> unanswered = [.. review.Family.Open.Where(open => !IsAboutScores(review, open.Name))];
        if (others.Count > 0)
        {
            yield return new ViewTable(
                "The other questions. Interval and chance are each question's own, asked alone. By chance: how many of a number of months in "
                + "which it makes no difference would show one as clear as this.",
                [
                    new ViewColumn("Question", false),
                    new ViewColumn("Difference", true),
                    new ViewColumn("95 % interval", true),
                    new ViewColumn("By chance", true),
                    new ViewColumn("Bakes", true),
                    new ViewColumn("Verdict", false),
                ],
                [
                    .. others.Select(answer => new[]
                    {
                        FindingWords.Asked(answer),
                        FindingWords.Effect(answer, figures),
                        FindingWords.Interval(answer, figures),
                        Figures.Chance(answer.PValue),
                        Figures.Rounded(answer.Bakes.Count, 0),
                        FindingWords.Of(answer.Strength),
                    }),
                ]);
        }

        if (unanswered.Count > 0)
        {
            yield return new ViewTable(
                "Questions without an answer.",
                [new ViewColumn("Question", false), new ViewColumn("Why", false), new ViewColumn("What would help", false)],
                [.. unanswered.Select(open => new[] { open.Words, open.Reason, open.NextStep })]);
        }
    }

    // They stand under their attributes, behind the judges' agreement.
    private static bool IsAboutScores(MonthReview review, string name) =>
        review.Scores.Attributes.Any(attribute => name.StartsWith(attribute.Name + ".", StringComparison.Ordinal));

    private static IReadOnlyList<string> Caveats(MonthReview review) =>
    [
        .. review.Family.Answers.Where(answer => !IsAboutScores(review, answer.Name))
            .SelectMany(answer => answer.Caveats.Select(caveat => (answer.Question, caveat)))
            .GroupBy(pair => pair.caveat, pair => pair.Question)
            .Select(same => $"{same.Key} ({string.Join(" ", same)})"),
        .. review.Family.Answers
            .Where(answer => answer.OddBakes.Count > 0 && !IsAboutScores(review, answer.Name))
            .Select(answer => $"Odd bakes, {string.Join(", ", answer.OddBakes.Select(odd => $"{odd.Bake.Id}: {odd.What}"))}. ({answer.Question})"),
        "Bakes are taken as independent of each other; bakes of one day, or by one hand, may not be.",
        ModelAnswer.NotACause,
    ];
}
