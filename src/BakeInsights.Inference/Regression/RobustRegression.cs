namespace BakeInsights.Inference;

/// <summary>Linear fits that single wild rows can't carry away.</summary>
/// <remarks>
/// Standard errors: Huber (1981), Robust Statistics, Wiley, section 7.6, with his correction for few rows; they hold
/// for many rows and errors that don't depend on the columns. Rows that are far apart in their columns carry a Huber
/// fit as they carry least squares; the MM-estimate stands against them too.
/// </remarks>
public static class RobustRegression
{
    /// <summary>Huber's M-estimate, its scale re-estimated along the way.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <returns>
    /// The fit, or a problem: one of those of <see cref="LeastSquares"/>, half of the rows fitted without residual, or
    /// an iteration that doesn't settle.
    /// </returns>
    /// <exception cref="ArgumentException">The response has another number of rows than the design.</exception>
    public static Attempt<RobustFit> Huber(Design design, IReadOnlyList<double> response) =>
        Start(design, response).Match(
            start => Settled(start, start.Coefficients, RobustLoss.Huber, null, "Huber M-estimate"),
            problem => problem);

    /// <summary>
    /// The bisquare M-estimate from Huber's fit, its scale re-estimated along the way: a solution near Huber's, which
    /// need not be the only one. Prefer <see cref="MmEstimate"/>, which looks for the best.
    /// </summary>
    /// <inheritdoc cref="Huber"/>
    public static Attempt<RobustFit> Bisquare(Design design, IReadOnlyList<double> response) =>
        Huber(design, response).Match(
            huber => Settled(
                new RobustRows(design, huber.Response), huber.Coefficients, RobustLoss.Bisquare, null,
                "bisquare M-estimate"),
            problem => problem);

    /// <summary>
    /// The MM-estimate: an S-estimate finds the bulk of the rows, up to half of them being wild, and sets the scale; a
    /// bisquare M-estimate from there with that scale makes it 95 % efficient.
    /// </summary>
    /// <remarks>
    /// Yohai (1987), High breakdown-point and high efficiency robust estimates for regression, Annals of Statistics 15,
    /// 642-656. The S-estimate: Salibian-Barrera and Yohai (2006), A fast algorithm for S-regression estimates, Journal
    /// of Computational and Graphical Statistics 15, 414-427.
    /// </remarks>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="seed">The seed by which small sets of rows are drawn to start from.</param>
    /// <inheritdoc cref="Huber"/>
    public static Attempt<RobustFit> MmEstimate(Design design, IReadOnlyList<double> response, int seed)
    {
        if (!Start(design, response).TryGet(out var rows, out var problem))
        {
            return problem;
        }

        var (coefficients, scale) = FastS.Of(rows, seed);
        return rows.IsNegligible(scale)
            ? NoScale(rows)
            : Settled(rows, coefficients, RobustLoss.EfficientBisquare, scale, "MM-estimate");
    }

    private static Attempt<RobustRows> Start(Design design, IReadOnlyList<double> response) =>
        LeastSquares.Fit(design, response).Select(fit => new RobustRows(design, response)
        {
            Coefficients = [.. fit.Terms.Select(term => (Doubled)term.Estimate)],
        });

    /// <summary>
    /// Weighs and fits in turn until the residuals stay; the scale is re-estimated unless it is given.
    /// </summary>
    private static Attempt<RobustFit> Settled(
        RobustRows rows, Doubled[] start, RobustLoss loss, double? givenScale, string method)
    {
        // Common practice, no source: the residuals stay to eleven digits, and a step costs little.
        const double enough = 1e-11;
        const int mostSteps = 2000;

        var (coefficients, residuals) = (start, rows.Residuals(start));
        for (var step = 0; step < mostSteps; step++)
        {
            var scale = givenScale ?? RobustRows.MedianScale(residuals);
            if (rows.IsNegligible(scale))
            {
                return NoScale(rows);
            }

            double[] weights = Array.ConvertAll(residuals, r => loss.Weight(r / scale));
            var before = residuals;
            coefficients = Solution.CoefficientsOf(rows.Weighted(weights));
            residuals = rows.Residuals(coefficients);
            var moved = residuals.Zip(before, (now, then) => (now - then) * (now - then)).Sum();
            if (moved <= enough * enough * before.Sum(r => r * r))
            {
                return new RobustFit(rows, coefficients, residuals, scale, loss, method);
            }
        }

        return new FitProblem(
            FitProblemKind.NoConvergence,
            rows.Design.Names,
            "The weights of the rows don't settle, so there is more than one answer.",
            "Add rows, or look at those that lie far off one by one.");
    }

    private static FitProblem NoScale(RobustRows rows) => new(
        FitProblemKind.ZeroSpread,
        rows.Design.Names,
        "At least half of the rows are fitted without any residual, so the others can't be weighed.",
        "Fit by least squares, or record the response to more digits.");
}
