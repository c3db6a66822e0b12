namespace BakeInsights.Inference;

/// <summary>
/// Linear regression in which some coefficients have a normal prior of their own, in absolute units, and the residual
/// spread is integrated out.
/// </summary>
/// <remarks>
/// Coefficients without a prior are flat, the residual spread has the reference prior 1 / s: Box and Tiao (1973),
/// Bayesian Inference in Statistical Analysis, sections 2.7 and 2.12. Given s all is normal; the integral over s is
/// numeric. The prior's width doesn't scale with s, as that of a conjugate prior would. Assumptions: those of least
/// squares, and that priors are independent of each other and of these data.
/// </remarks>
public static class PriorRegression
{
    /// <summary>
    /// With one degree of freedom and one prior, the spread's distribution falls too slowly for a variance to exist.
    /// </summary>
    private const int FewestFreedom = 2;

    /// <summary>Fits the response on the columns of the design.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="priors">The priors, at least one, and at most one a column.</param>
    /// <returns>
    /// The fit, or a problem: one of least squares, as the data alone have to be able to speak; fewer than two rows
    /// more than columns; a perfect fit, which leaves no spread to weigh the data with; or columns with priors that nearly
    /// depend on each other.
    /// </returns>
    /// <exception cref="ArgumentException">
    /// The response has another number of rows than the design, there is no prior, a prior is of no column, or two are
    /// of one.
    /// </exception>
    public static Attempt<PriorFit> Fit(
        Design design, IReadOnlyList<double> response, IReadOnlyList<NormalPrior> priors)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(priors);
        if (priors.Count == 0)
        {
            throw new ArgumentException("There is no prior; least squares is the fit without.", nameof(priors));
        }

        int[] places = [.. priors.Select(prior => design.IndexOf(prior.Column))];
        if (places.Distinct().Count() < places.Length)
        {
            throw new ArgumentException("Two priors are of one column.", nameof(priors));
        }

        return LeastSquares.Fit(design, response).Match<Attempt<PriorFit>>(
            data =>
            {
                var update = new PriorUpdate(data, [.. priors], places);
                return Problem(data, update, priors) is { } problem
                    ? problem
                    : new PriorFit(data, update, [.. priors], places);
            },
            problem => problem);
    }

    private static FitProblem? Problem(LeastSquaresFit data, PriorUpdate update, IReadOnlyList<NormalPrior> priors)
    {
        var (n, p) = (data.N, data.Terms.Count);
        if (n < p + FewestFreedom)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                data.Design.Names,
                $"There are {n} rows for {p} columns, and at least {p + FewestFreedom} are needed to integrate the "
                    + "residual spread out.",
                $"Add {p + FewestFreedom - n} or more rows, or leave columns out.");
        }

        if (data.ResidualSumOfSquares == 0)
        {
            return new FitProblem(
                FitProblemKind.ZeroSpread,
                ["response", .. data.Design.Names],
                "The columns meet the response in every row, so no spread is left to weigh the data against the "
                    + "prior with.",
                "Add rows, leave columns out, or measure the response more finely.");
        }

        if (!update.IsDetermined)
        {
            return new FitProblem(
                FitProblemKind.DependentColumn,
                [.. priors.Select(prior => prior.Column)],
                "The columns with priors so nearly depend on each other that the data can't be weighed against each prior.",
                "State a prior of fewer of them, or add rows in which each varies by itself.");
        }

        return update.IsInRange ? null : new FitProblem(
            FitProblemKind.OutOfRange,
            [.. priors.Select(prior => prior.Column)],
            "The coefficients and their priors differ so much in size that the squares leave the range of double precision.",
            "State columns, response and priors in units that make their numbers of like size.");
    }
}
