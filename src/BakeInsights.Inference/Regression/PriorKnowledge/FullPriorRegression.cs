namespace BakeInsights.Inference;

/// <summary>
/// Linear regression in which every coefficient has a normal prior and the residual spread has one too, so that any
/// number of rows will do: with none it is the prior, with many it tends to least squares.
/// </summary>
/// <remarks>
/// Given the spread all is normal (Lindley and Smith 1972, Journal of the Royal Statistical Society B 34, 1-41); the
/// integral over ln spread is numeric. Unlike <see cref="PriorRegression"/> it needs no fit by the data alone, and
/// columns may depend on each other: what the data can't tell apart stays as the prior has it. Assumptions: those of
/// least squares; priors independent of each other and of these data.
/// </remarks>
public static class FullPriorRegression
{
    /// <summary>Joins priors and data.</summary>
    /// <param name="priors">A prior for each column, at least one; their names are the columns'.</param>
    /// <param name="spread">The prior of the residual standard deviation.</param>
    /// <param name="rows">A value for each column by row, in the order of the priors; a constant is a column of ones.</param>
    /// <param name="response">The response by row.</param>
    /// <returns>The fit, or a problem: a value is missing, or numbers so large that their squares leave double precision.</returns>
    /// <exception cref="ArgumentException">
    /// There is no prior, two are of one column, or rows, columns and responses differ in number.
    /// </exception>
    public static Attempt<FullPriorFit> Fit(
        IReadOnlyList<NormalPrior> priors, SpreadPrior spread, IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<double> response)
    {
        ArgumentNullException.ThrowIfNull(priors);
        ArgumentNullException.ThrowIfNull(spread);
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(response);
        Refuse(priors, rows, response);
        for (var j = 0; j < priors.Count; j++)
        {
            if (rows.Any(row => !double.IsFinite(row[j])))
            {
                return Missing(priors[j].Column);
            }
        }

        if (response.Any(value => !double.IsFinite(value)))
        {
            return Missing("response");
        }

        var sums = new PriorSums(priors, rows, response);
        var (low, high) = spread.Range();
        return sums.IsInRange(low) && sums.IsInRange(high)
            ? new FullPriorFit(priors, SpreadGrid.Of(log => spread.LogDensity(log) + sums.LogDensity(log), low, high)
                .Select(at => sums.Given(at.Spread, at.Weight)), rows, response)
            : new FitProblem(
                FitProblemKind.OutOfRange,
                [.. priors.Select(prior => prior.Column)],
                "The columns, the response and their priors differ so much in size that double precision can't hold their squares.",
                "State columns, response and priors in units that make their numbers of like size.");
    }

    private static void Refuse(
        IReadOnlyList<NormalPrior> priors, IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<double> response)
    {
        if (priors.Count == 0)
        {
            throw new ArgumentException("There is no prior.", nameof(priors));
        }

        if (priors.Select(prior => prior.Column).Distinct().Count() < priors.Count)
        {
            throw new ArgumentException("Two priors are of one column.", nameof(priors));
        }

        if (rows.Count != response.Count || rows.Any(row => row.Count != priors.Count))
        {
            throw new ArgumentException("Each row needs a response, and a value for each prior.", nameof(rows));
        }
    }

    private static FitProblem Missing(string column) => new(
        FitProblemKind.MissingValue,
        [column],
        $"A value of {column} is not a finite number.",
        "Give the missing value or leave the row out.");
}
