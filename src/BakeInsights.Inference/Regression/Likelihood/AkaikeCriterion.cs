namespace BakeInsights.Inference;

/// <summary>Akaike's criterion with the correction of Hurvich and Tsai (1989); see <see cref="FitSummary"/>.</summary>
internal static class AkaikeCriterion
{
    /// <summary>The criterion; null with so few rows that the correction is not defined.</summary>
    /// <param name="logLikelihood">The log-likelihood at its maximum.</param>
    /// <param name="n">The number of rows.</param>
    /// <param name="k">The number of parameters, those of the spread included.</param>
    public static double? Of(double logLikelihood, int n, int k) =>
        n - k - 1 > 0 ? (-2 * logLikelihood) + (2.0 * k * n / (n - k - 1)) : null;
}
