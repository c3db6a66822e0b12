namespace BakeInsights.Inference;

/// <summary>Ordinary and weighted least squares.</summary>
/// <remarks>
/// Columns are taken as they are: neither their scale nor their order affects the digits. Where they nearly depend on
/// each other, doubled precision takes over by itself, about ten times slower.
/// </remarks>
public static class LeastSquares
{
    /// <summary>Double precision's relative spacing, 2^-52.</summary>
    internal const double Epsilon = 2.2204460492503131e-16;

    /// <summary>The name under which problems speak of the response.</summary>
    internal const string ResponseName = "response";

    /// <summary>The name under which problems speak of the weights.</summary>
    private const string WeightsName = "weights";

    /// <summary>Fits the response on the columns of the design.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <returns>
    /// The fit, or a problem: a number is missing, there are no more rows than columns, a column is a combination of
    /// those before it, or the response doesn't vary.
    /// </returns>
    /// <exception cref="ArgumentException">The response has another number of rows than the design.</exception>
    public static Attempt<LeastSquaresFit> Fit(Design design, IReadOnlyList<double> response) =>
        Fit(design, response, null);

    /// <summary>Fits rows of different precision: the sum of the weighted squared residuals is made least.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="weights">
    /// The weight of each row: inversely proportional to the variance of its response, such as the number of loaves
    /// that a mean is of. Positive; null if all rows count alike.
    /// </param>
    /// <returns>
    /// The fit, or a problem: one of those of unweighted rows, or a weight that is not positive.
    /// </returns>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static Attempt<LeastSquaresFit> Fit(
        Design design, IReadOnlyList<double> response, IReadOnlyList<double>? weights)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(response);
        RefuseLength(design, response, ResponseName);
        RefuseLength(design, weights, WeightsName);
        var y = new DesignColumn(ResponseName, response);
        var w = weights is null ? null : new DesignColumn(WeightsName, weights);
        if (FitChecks.Find(design, y, w) is { } problem)
        {
            return problem;
        }

        var rows = new WorkRows(design, y, w?.Span.ToArray());
        return Solution.Of(rows, design.Names).Select(solution => new LeastSquaresFit(design, rows, solution));
    }

    /// <summary>Asks whether the columns that only the larger fit has explain more than chance would.</summary>
    /// <param name="smaller">A fit.</param>
    /// <param name="larger">A fit of the same response on the same columns and at least one more.</param>
    /// <exception cref="ArgumentException">The fits are not nested, or not of the same rows.</exception>
    public static NestedComparison Compare(LeastSquaresFit smaller, LeastSquaresFit larger)
    {
        ArgumentNullException.ThrowIfNull(smaller);
        ArgumentNullException.ThrowIfNull(larger);
        return NestedComparison.Of(smaller, larger);
    }

    private static void RefuseLength(Design design, IReadOnlyList<double>? values, string name)
    {
        if (values is not null && values.Count != design.RowCount)
        {
            var verb = name == WeightsName ? "have" : "has";
            throw new ArgumentException($"The {name} {verb} {values.Count} rows and the design {design.RowCount}.", name);
        }
    }
}
