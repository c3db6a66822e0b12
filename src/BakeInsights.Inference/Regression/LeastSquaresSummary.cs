namespace BakeInsights.Inference;

/// <summary>What can be said of a least-squares fit as a whole.</summary>
internal static class LeastSquaresSummary
{
    /// <summary>The summary; a perfect fit has no likelihood, and a fit of too few rows no corrected criterion.</summary>
    public static FitSummary Of(LeastSquaresFit fit)
    {
        var likelihood = LogLikelihood(fit.ResidualSumOfSquares, fit.N) + (fit.Weights?.Sum(Math.Log) / 2 ?? 0);
        return new FitSummary(
            fit.Weights is null ? "least squares" : "weighted least squares",
            fit.N,
            fit.ResidualDegreesOfFreedom,
            fit.ResidualStandardDeviation,
            fit.RSquared,
            likelihood,
            CorrectedAic(likelihood, fit.N, fit.Terms.Count + 1));
    }

    /// <summary>See <see cref="LeastSquaresFit.LeaveOneOutError"/>.</summary>
    public static double? LeaveOneOutError(LeastSquaresFit fit)
    {
        var sum = 0.0;
        for (var i = 0; i < fit.N; i++)
        {
            // A leverage is rounded, and 1 less it loses the same absolute error.
            var free = 1 - fit.Leverage[i];
            if (free <= fit.N * LeastSquares.Epsilon)
            {
                return null;
            }

            sum += (fit.Weights?[i] ?? 1) * Math.Pow(fit.Residuals[i] / free, 2);
        }

        return Math.Sqrt(sum / fit.N);
    }

    /// <summary>The corrected criterion of Hurvich and Tsai (1989); null if the rows are too few for it.</summary>
    public static double? CorrectedAic(double? logLikelihood, int rows, int parameters) =>
        rows - parameters - 1 > 0
            ? (-2 * logLikelihood) + (2.0 * parameters * rows / (rows - parameters - 1))
            : null;

    /// <summary>The greatest log likelihood of rows of equal weight; null for a perfect fit.</summary>
    public static double? LogLikelihood(double residualSumOfSquares, int rows) => residualSumOfSquares > 0
        ? -rows / 2.0 * (Math.Log(2 * Math.PI * residualSumOfSquares / rows) + 1)
        : null;
}
