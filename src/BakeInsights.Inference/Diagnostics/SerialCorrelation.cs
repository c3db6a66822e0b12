namespace BakeInsights.Inference;

/// <summary>Checks whether neighbouring rows err alike, for rows in the order in which they came.</summary>
public static class SerialCorrelation
{
    /// <summary>
    /// The ratio of Durbin and Watson: squared steps between neighbouring residuals over squared residuals. About 2 if
    /// rows are independent, towards 0 if neighbours are alike, towards 4 if they alternate.
    /// </summary>
    /// <remarks>
    /// Durbin and Watson (1950), Biometrika 37, 409-428. The p value is two-sided: exact for normal errors up to
    /// 200 rows, by Imhof (1961), Computing the distribution of quadratic forms in normal variables, Biometrika 48,
    /// 419-426; beyond from the normal curve with the exact mean and variance of Durbin and Watson (1951), Biometrika
    /// 38, 159-178.
    /// </remarks>
    /// <returns>The check, or a problem: the fit is perfect.</returns>
    public static Attempt<Diagnostic> DurbinWatson(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (Diagnostic.PerfectFit(fit) is { } problem)
        {
            return problem;
        }

        double[] residuals = [.. fit.Residuals.Select((r, i) => r * Math.Sqrt(fit.Weights?[i] ?? 1))];
        var steps = residuals.Skip(1).Zip(residuals, (next, r) => (next - r) * (next - r)).Sum();
        var ratio = steps / residuals.Sum(r => r * r);
        var below = DurbinWatsonDistribution.Below(ratio, fit);
        var p = Math.Min(1, 2 * Math.Min(below, 1 - below));
        return Diagnostic.Test(
            "Durbin-Watson", ratio, "the ratio's own distribution for these columns", p,
            ratio < 2 ? "Neighbouring rows err alike: their order matters" : "Neighbouring rows err in opposite ways",
            "Nothing says that neighbouring rows err alike");
    }
}
