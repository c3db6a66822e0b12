using MathNet.Numerics;

namespace BakeInsights.Inference;

/// <summary>Whether the compared columns of ratings differ, and how far the rows agree on it, by ranks alone.</summary>
/// <remarks>
/// Each row ranks the columns, tied ratings sharing the mean of their ranks. Friedman (1937), Journal of the American
/// Statistical Association 32, 675-701; Kendall and Babington Smith (1939), Annals of Mathematical Statistics 10,
/// 275-287; correction for ties: Conover (1999), Practical Nonparametric Statistics, 3rd ed., section 5.8. The p value
/// holds for many rows.
/// </remarks>
/// <param name="ChiSquare">Friedman's statistic.</param>
/// <param name="DegreesOfFreedom">Columns less one.</param>
/// <param name="PValue">The probability of so large a statistic if the columns don't differ.</param>
/// <param name="Concordance">Kendall's W: 0 if rows rank at odds, 1 if all rank alike.</param>
/// <param name="RankSums">The sum of each column's ranks.</param>
public sealed record RankAgreement(
    double ChiSquare, int DegreesOfFreedom, double PValue, double Concordance, IReadOnlyList<double> RankSums)
{
    /// <summary>Compares the judges by how they rank within each thing.</summary>
    /// <returns>The comparison, or the problem that every row is tied throughout.</returns>
    public static Attempt<RankAgreement> OfJudges(RatingTable ratings)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        return Of([.. Enumerable.Range(0, ratings.ThingCount).Select(ratings.Thing)]);
    }

    /// <summary>Compares the things by how each judge ranks them: W then says how far the judges agree.</summary>
    /// <returns>The comparison, or the problem that every judge ties all things.</returns>
    public static Attempt<RankAgreement> OfThings(RatingTable ratings)
    {
        ArgumentNullException.ThrowIfNull(ratings);
        return Of([.. Enumerable.Range(0, ratings.JudgeCount).Select(ratings.Judge)]);
    }

    private static Attempt<RankAgreement> Of(double[][] rows)
    {
        var (b, k) = (rows.Length, rows[0].Length);
        var ranks = rows.Select(Ranks).ToArray();
        double[] sums = [.. Enumerable.Range(0, k).Select(j => ranks.Sum(r => r[j]))];
        var spread = ranks.Sum(row => row.Sum(r => Square(r - ((k + 1) / 2.0))));
        if (spread == 0)
        {
            return new FitProblem(
                FitProblemKind.NoSpread,
                ["ratings"],
                "Every row of ratings is tied throughout, so nothing is ranked.",
                "Add rows whose ratings differ, or rate on a finer scale.");
        }

        var between = sums.Sum(s => Square(s - (b * (k + 1) / 2.0)));
        var chiSquare = (k - 1) * between / spread;
        return new RankAgreement(
            chiSquare,
            k - 1,
            SpecialFunctions.GammaUpperRegularized((k - 1) / 2.0, chiSquare / 2),
            between / spread / b,
            sums);
    }

    private static double[] Ranks(double[] values) =>
        [.. values.Select(v => values.Count(o => o < v) + ((values.Count(o => o == v) + 1) / 2.0))];

    private static double Square(double x) => x * x;
}
