namespace BakeInsights.Inference;

/// <summary>Least squares on the logarithms of midpoints.</summary>
/// <param name="fit">The fit of the logarithms.</param>
internal sealed class MidpointEngine(LeastSquaresFit fit) : ICensoredEngine
{
    public Term? LogSpread => null;

    public double Estimate(IReadOnlyList<double> weights) => fit.Combination(weights).Estimate;

    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        fit.Covariance(first, second);

    public ProfileInterval Interval(Term combination, IReadOnlyList<double> weights, double level)
    {
        var interval = combination.Interval(level);
        return new ProfileInterval(interval.Low, interval.High);
    }

    public Term Prediction(Term mean) =>
        mean with { StandardError = double.Hypot(mean.StandardError, fit.ResidualStandardDeviation) };

    /// <summary>
    /// The likelihood is that of exact values at the midpoints, so it can't be compared with another's.
    /// </summary>
    public FitSummary Summary(CensoredValue[] values)
    {
        var n = values.Length;
        var logLikelihood = (-n / 2.0 * (Math.Log(2 * Math.PI * fit.ResidualSumOfSquares / n) + 1))
            - fit.Response.Sum();
        return new FitSummary(
            "log-normal regression by least squares on midpoints",
            n,
            fit.ResidualDegreesOfFreedom,
            fit.ResidualStandardDeviation,
            fit.RSquared,
            logLikelihood,
            AkaikeCriterion.Of(logLikelihood, n, fit.Terms.Count + 1));
    }

    public FitRow Row(int row, CensoredValue value, double median)
    {
        var midpoint = Math.Exp(fit.Response[row]);
        return new FitRow(row, midpoint, median, midpoint - median, fit.Leverage[row], null);
    }
}
