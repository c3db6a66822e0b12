using MathNet.Numerics.Statistics;

namespace BakeInsights.Inference;

/// <summary>How far two columns rise together, by ranks alone: for scores, whose steps need not be equal.</summary>
/// <param name="Spearman">
/// The correlation of the ranks, tied values sharing the mean of theirs. Spearman (1904), American Journal of
/// Psychology 15, 72-101.
/// </param>
/// <param name="KendallB">
/// Pairs of rows in the same order less those in opposite order, over the geometric mean of the pairs that are not tied
/// in the one and in the other column: tau-b. Kendall (1945), Biometrika 33, 239-251.
/// </param>
public sealed record RankCorrelation(double Spearman, double KendallB)
{
    /// <summary>The correlations of two columns.</summary>
    /// <param name="first">The one column.</param>
    /// <param name="second">The other, with as many rows.</param>
    /// <returns>The correlations, or the problem that a number is missing or a column is the same throughout.</returns>
    /// <exception cref="ArgumentException">The columns differ in their number of rows.</exception>
    public static Attempt<RankCorrelation> Of(DesignColumn first, DesignColumn second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Values.Count != second.Values.Count)
        {
            throw new ArgumentException(
                $"Column {first.Name} has {first.Values.Count} rows and column {second.Name} has {second.Values.Count}.",
                nameof(second));
        }

        foreach (var column in new[] { first, second })
        {
            if (column.Values.Any(value => !double.IsFinite(value)))
            {
                return new FitProblem(
                    FitProblemKind.MissingValue, [column.Name], $"Column {column.Name} has a value that is no number.",
                    "Leave that row out, or fill in its value.");
            }

            if (column.Values.All(value => value == column.Values[0]))
            {
                return new FitProblem(
                    FitProblemKind.NoSpread, [column.Name], $"Column {column.Name} is the same in every row, so it has no order.",
                    "Add rows in which it differs.");
            }
        }

        return new RankCorrelation(Correlation.Spearman(first.Values, second.Values), Kendall(first.Values, second.Values));
    }

    private static double Kendall(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        var (score, untiedFirst, untiedSecond) = (0.0, 0.0, 0.0);
        for (var i = 1; i < first.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (one, other) = (Math.Sign(first[i] - first[j]), Math.Sign(second[i] - second[j]));
                score += one * other;
                untiedFirst += one * one;
                untiedSecond += other * other;
            }
        }

        return score / (Math.Sqrt(untiedFirst) * Math.Sqrt(untiedSecond));
    }
}
