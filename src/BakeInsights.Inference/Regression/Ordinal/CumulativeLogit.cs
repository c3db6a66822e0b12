namespace BakeInsights.Inference;

/// <summary>
/// Regression of ordered scores: the cumulative logit (proportional odds) model, logit P(Y at most k) = z_k - x'b, with
/// or without a shift of its own for each rater.
/// </summary>
/// <remarks>
/// McCullagh (1980), Regression models for ordinal data, Journal of the Royal Statistical Society B 42, 109-142. The
/// log-likelihood is concave: Pratt (1981), Journal of the American Statistical Association 76, 103-106. Assumptions:
/// a column moves the odds of exceeding each score by the same factor, and rows are independent (given the rater).
/// Intervals are those of large samples.
/// </remarks>
public static class CumulativeLogit
{
    internal const string ResponseName = "response";

    /// <summary>Fits scores on the columns of the design.</summary>
    /// <param name="design">The columns, none of them constant: the thresholds take the place of an intercept.</param>
    /// <param name="scores">
    /// The score by row. Only the order of scores counts; the categories are the different scores that occur.
    /// </param>
    /// <returns>
    /// The fit, or a problem: a number is missing, there are too few rows, a column is constant or a combination of
    /// others, all scores are the same, or a column tells scores apart without error.
    /// </returns>
    /// <exception cref="ArgumentException">The scores have another number of rows than the design.</exception>
    public static Attempt<OrdinalFit> Fit(Design design, IReadOnlyList<double> scores)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(scores);
        if (scores.Count != design.RowCount)
        {
            throw new ArgumentException(
                $"The scores have {scores.Count} rows and the design {design.RowCount}.", nameof(scores));
        }

        if (OrdinalChecks.Find(design, scores) is { } problem)
        {
            return problem;
        }

        var data = OrdinalData.Of(design, scores);
        var found = NewtonMaximum.Find(data.At, data.Start(), concave: true);
        return found is { Converged: true, Factor: { } factor }
            ? new OrdinalFit(design, data, found, factor, null)
            : OrdinalChecks.Separation(design, data, found);
    }

    /// <summary>Fits scores on the columns of the design, with a normal shift of the scale for each rater.</summary>
    /// <remarks>
    /// The raters' shifts are integrated out by adaptive Gauss-Hermite quadrature with 25 nodes a rater: Pinheiro and
    /// Bates (1995), Journal of Computational and Graphical Statistics 4, 12-35. The raters are taken as a random
    /// sample of raters.
    /// </remarks>
    /// <param name="design">The columns, none of them constant.</param>
    /// <param name="scores">The score by row.</param>
    /// <param name="raters">Who gave each score.</param>
    /// <returns>
    /// The fit, or a problem: one of those without raters, or there is one rater, or no rater gave two scores.
    /// </returns>
    /// <exception cref="ArgumentException">Scores or raters have another number of rows than the design.</exception>
    public static Attempt<OrdinalFit> Fit(Design design, IReadOnlyList<double> scores, IReadOnlyList<string> raters)
    {
        ArgumentNullException.ThrowIfNull(raters);
        var plain = Fit(design, scores);
        if (raters.Count != design.RowCount)
        {
            throw new ArgumentException(
                $"The raters have {raters.Count} rows and the design {design.RowCount}.", nameof(raters));
        }

        if (!plain.TryGet(out var start, out var problem))
        {
            return problem;
        }

        if (OrdinalChecks.Raters(raters) is { } tooFew)
        {
            return tooFew;
        }

        return RaterSearch.Find(design, OrdinalData.Of(design, scores), start, raters);
    }
}
