using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>What moved the scores: the judges' agreement first, then every question with its interval.</summary>
public static class ScoresView
{
    private const int MostJudges = 12;

    /// <summary>The answers as a baker reads them.</summary>
    /// <param name="scores">The answers.</param>
    /// <param name="family">The questions judged, these among them; null to judge these alone.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(ScoreAnswers scores, FindingFamily? family, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(scores);
        if (scores.Attributes.Count == 0)
        {
            return new View(
            [
                new ViewHeading("Scores"),
                new ViewParagraph("No bake was scored. Log crumb_score, crust_score or flavour_score, or let judges score loaves in scores.csv."),
            ]);
        }

        return new View([.. Blocks(scores, family ?? FindingFamily.Judge(scores.Answers, scores.Open), new Figures(units))]);
    }

    /// <summary>The same as parts of another view; none where nothing was scored.</summary>
    internal static IEnumerable<ViewBlock> Blocks(ScoreAnswers scores, FindingFamily family, Figures figures) =>
        scores.Attributes.SelectMany(attribute => Blocks(attribute, family, scores.Open, figures));

    private static IEnumerable<ViewBlock> Blocks(
        AttributeScores attribute, FindingFamily family, IReadOnlyList<OpenQuestion> open, Figures figures)
    {
        yield return new ViewHeading(attribute.Rating.Title);
        yield return new ViewParagraph($"{Scale(attribute)} {AgreementWords.Of(attribute)}");
        if (attribute.Agreement.TryGet(out var judges, out _) && judges.Standings.Count <= MostJudges)
        {
            yield return JudgesTable(judges);
            if (judges.Pairs.Count is > 0 and <= MostJudges)
            {
                yield return PairsTable(judges);
            }
        }

        var prefix = attribute.Name + ".";
        Finding[] answers = [.. family.Answers.Where(answer => answer.Name.StartsWith(prefix, StringComparison.Ordinal))];
        if (answers.Length > 0)
        {
            yield return ScoreAnswerBlocks.Table(answers, attribute.Kind == AttributeKind.MiddleIsBest, figures);
            yield return new ViewList([.. ScoreAnswerBlocks.Sentences(answers)]);
        }

        var unanswered = open.Where(question => question.Name.StartsWith(prefix, StringComparison.Ordinal)).ToList();
        if (unanswered.Count > 0)
        {
            yield return new ViewList(
            [
                .. unanswered.GroupBy(question => (question.Reason, question.NextStep))
                    .Select(same => $"Not answered: {string.Join(" ", same.Select(question => question.Words))} {same.Key.Reason} {same.Key.NextStep}"),
            ]);
        }
    }

    private static string Scale(AttributeScores attribute)
    {
        var bakes = JournalView.Count(attribute.Bakes, "bake");
        var ends = attribute is { Low: { } low, High: { } high }
            ? $", on a scale from {Figures.Shortest(low)} to {Figures.Shortest(high)}"
            : "";
        var best = attribute.Kind switch
        {
            AttributeKind.MiddleIsBest => ", the middle being best",
            AttributeKind.MoreIsBetter => ", more being better",
            _ => ", which score is best not being said",
        };
        return $"The {attribute.Noun} of {bakes} was scored{ends}{best}.";
    }

    private static ViewTable JudgesTable(JudgesAgreement judges) => new(
        "The judges beside each other.",
        [new ViewColumn("Judge", false), new ViewColumn("Bakes scored with others", true), new ViewColumn("Points above the others' mean", true)],
        [
            .. judges.Standings.Select(standing => new[]
            {
                standing.Judge, standing.Bakes.ToString(CultureInfo.InvariantCulture), Figures.Rounded(standing.Shift, 2),
            }),
        ]);

    private static ViewTable PairsTable(JudgesAgreement judges) => new(
        "Each two judges: weighted kappa, 1 for full agreement and 0 for what chance brings.",
        [new ViewColumn("Judges", false), new ViewColumn("Kappa", true), new ViewColumn("95 % interval", true)],
        [
            .. judges.Pairs.Select(pair =>
            {
                var ends = pair.Kappa.Interval(ModelAnswer.Level);
                var doubt = pair.Kappa.Caveats.Count > 0 ? " (rough: few bakes)" : "";
                return new[]
                {
                    $"{pair.First} and {pair.Second}", Figures.Rounded(pair.Kappa.Estimate, 2), Figures.Range(ends.Low, ends.High, 2) + doubt,
                };
            }),
        ]);
}
