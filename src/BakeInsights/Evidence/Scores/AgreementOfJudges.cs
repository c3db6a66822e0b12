using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Works out how far the judges of an attribute agree.</summary>
internal static class AgreementOfJudges
{
    // Our own choice: kappa of finer scales needs more bakes than a kitchen has (2 x categories squared).
    private const int MostCategories = 10;

    /// <summary>The agreement, or the problem that nobody can be compared.</summary>
    public static Attempt<JudgesAgreement> Of(ScoreTable table)
    {
        if (JudgeTable.Of(table) is not { } judges)
        {
            return new FitProblem(
                FitProblemKind.TooFewGroups,
                [table.Name],
                table.IsJudged
                    ? $"No two judges scored the {table.Noun} of the same {JudgeTable.LeastBakes} bakes, so their agreement is not known."
                    : $"The {table.Noun} scores stand in the bakes themselves, without judges, so nobody's agreement is known.",
                $"Let two or three people score the {table.Noun} of the same bakes, each without seeing the others' scores, into scores.csv.");
        }

        if (!RatingTable.Of(judges.Ratings()).TryGet(out var ratings, out var problem))
        {
            return problem;
        }

        var concordance = RankAgreement.OfThings(ratings).Match<double?>(ranks => ranks.Concordance, _ => null);
        if (IntraclassCorrelation.Of(ratings, AgreementKind.Consistency).TryGet(out var consistency, out problem))
        {
            Estimate? panel = consistency.Mean is { } mean && consistency.MeanInterval(ModelAnswer.Level) is { } ends
                ? new Estimate(mean, ends.Low, ends.High)
                : null;
            return new JudgesAgreement(
                judges, Single(consistency), panel,
                IntraclassCorrelation.Of(ratings, AgreementKind.Absolute).Match<Estimate?>(Single, _ => null),
                concordance, Pairs(table, judges));
        }

        // No two judges differ about any two bakes. That is full agreement only where bakes differ at all.
        return judges.Rows.Select(row => row.By(judges.Judges[0])).Distinct().Count() > 1
            ? new JudgesAgreement(
                judges, new Estimate(1, null, null), new Estimate(1, null, null),
                IntraclassCorrelation.Of(ratings, AgreementKind.Absolute).Match<Estimate?>(Single, _ => null),
                concordance, Pairs(table, judges))
            : new FitProblem(
                FitProblemKind.NoSpread,
                [table.Name],
                $"Every judge gave the {table.Noun} of all bakes one and the same score, so there is nothing to agree on.",
                "Score on a finer scale, or bakes that differ more.");
    }

    private static Estimate Single(IntraclassCorrelation correlation)
    {
        var ends = correlation.SingleInterval(ModelAnswer.Level);
        return new Estimate(correlation.Single, ends.Low, ends.High);
    }

    private static IReadOnlyList<JudgePair> Pairs(ScoreTable table, JudgeTable judges)
    {
        var ratings = judges.Ratings().Cast<double>().ToArray();
        var (low, high) = (table.Scale?.Low ?? ratings.Min(), table.Scale?.High ?? ratings.Max());
        var categories = high - low + 1;
        if (categories > MostCategories || !double.IsInteger(low) || !ratings.All(double.IsInteger) || ratings.Min() < low || ratings.Max() > high)
        {
            return [];
        }

        return
        [
            .. from i in Enumerable.Range(0, judges.Judges.Count)
               from j in Enumerable.Range(i + 1, judges.Judges.Count - i - 1)
               let kappa = Kappa.Of(CategoriesOf(i), CategoriesOf(j), (int)categories, KappaWeighting.Quadratic).Match<Kappa?>(found => found, _ => null)
               where kappa is not null
               select new JudgePair(judges.Judges[i], judges.Judges[j], kappa),
        ];

        int[] CategoriesOf(int judge) => [.. judges.Rows.Select(row => (int)(row.By(judges.Judges[judge])!.Value - low))];
    }
}
