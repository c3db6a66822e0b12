namespace BakeInsights.Inference;

/// <summary>
/// Regression of the natural logarithm of a positive response, such as a time, that may be known only within bounds:
/// the log-normal accelerated failure time model, ln T = x'b + s e with e standard normal.
/// </summary>
/// <remarks>
/// <para>Where nothing is censored to the right and no span between looks is wide, the logarithms of the midpoints are
/// fitted by least squares: with few rows the likelihood meets every look and its spread collapses. Elsewhere the fit
/// is by maximum likelihood, in coefficients over spread and one over spread, in which the log-likelihood is concave:
/// Burridge (1981), Empirical Bayes analysis of survival time data, Journal of the Royal Statistical Society B 43,
/// 65-75.</para>
/// <para>Assumptions: looks are made at times that don't depend on the outcome (given the columns), rows are
/// independent, and the logarithms scatter normally with one spread.</para>
/// </remarks>
public static class CensoredLogNormal
{
    /// <summary>
    /// The widest span, as a share of its midpoint, that is taken as an exact value at the midpoint. Common practice,
    /// no source; the coverage this gives is tabled in docs/inference.md.
    /// </summary>
    public const double WidestMidpointSpan = 0.2;

    /// <summary>
    /// How exact coefficients are that come from a search without end: half of the digits. Common practice, no source.
    /// </summary>
    private const double CutShort = 1.5e-8;

    internal const string ResponseName = "response";

    /// <summary>Fits the logarithm of the response on the columns of the design.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">What is known of the response, by row, in any unit of a positive quantity.</param>
    /// <returns>
    /// The fit, or a problem: those of least squares, a bound that is missing or not positive, a row whose upper
    /// bound lies below its lower, rows that are all censored to one side, a model that meets every row (so that the
    /// spread would be zero), or a column that tells censored rows from others without error.
    /// </returns>
    /// <exception cref="ArgumentException">The response has another number of rows than the design.</exception>
    public static Attempt<CensoredFit> Fit(Design design, IReadOnlyList<CensoredValue> response)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(response);
        if (response.Count != design.RowCount)
        {
            throw new ArgumentException(
                $"The response has {response.Count} rows and the design {design.RowCount}.", nameof(response));
        }

        CensoredValue[] values = [.. response];
        if (CensoredChecks.Find(design, values) is { } problem)
        {
            return problem;
        }

        return values.All(IsNarrow) ? FitMidpoints(design, values) : FitLikelihood(design, values);
    }

    private static bool IsNarrow(CensoredValue value) =>
        value is { Low: { } low, High: { } high } && high - low <= WidestMidpointSpan * (low + ((high - low) / 2));

    private static Attempt<CensoredFit> FitMidpoints(Design design, CensoredValue[] values)
    {
        double[] logs = [.. values.Select(v => Math.Log(v.Low!.Value + ((v.High!.Value - v.Low.Value) / 2)))];
        return LeastSquares.Fit(design, logs).Match<Attempt<CensoredFit>>(
            fit => fit.ResidualSumOfSquares > 0
                ? new CensoredFit(design, values, new MidpointEngine(fit))
                : CensoredChecks.ZeroSpread(design),
            problem => problem);
    }

    private static Attempt<CensoredFit> FitLikelihood(Design design, CensoredValue[] values)
    {
        var likelihood = CensoredLikelihood.Of(design, values);
        var found = NewtonMaximum.Find(likelihood.At, likelihood.Start(design), concave: true);
        if (likelihood.MeetsEveryRow(found.Point, found.Converged ? 0 : CutShort))
        {
            return CensoredChecks.ZeroSpread(design);
        }

        return found is { Converged: true, Factor: { } factor }
            ? new CensoredFit(design, values, new LikelihoodEngine(likelihood, found, factor))
            : CensoredChecks.Separation(design, found);
    }
}
