namespace BakeInsights.Inference;

/// <summary>Ordinary least squares, in double precision.</summary>
public static class LeastSquares
{
    /// <summary>Double precision's relative spacing, 2^-52.</summary>
    internal const double Epsilon = 2.2204460492503131e-16;

    /// <summary>The name under which problems speak of the response.</summary>
    private const string ResponseName = "response";

    /// <summary>Fits the response on the columns of the design by Householder QR with one step of refinement.</summary>
    /// <param name="design">The columns; a constant one has to be among them if an intercept is wanted.</param>
    /// <param name="response">The response by row.</param>
    /// <returns>
    /// The fit, or a problem: a number is missing, there are no more rows than columns, a column is a combination of
    /// those before it, or the response doesn't vary.
    /// </returns>
    /// <exception cref="ArgumentException">The response has another number of rows than the design.</exception>
    public static Attempt<LeastSquaresFit> Fit(Design design, IReadOnlyList<double> response)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(response);
        if (response.Count != design.RowCount)
        {
            throw new ArgumentException(
                $"The response has {response.Count} rows and the design {design.RowCount}.", nameof(response));
        }

        var y = new DesignColumn(ResponseName, response);
        if (FitChecks.Find(design, y) is { } problem)
        {
            return problem;
        }

        // A sum of n products, of which the factorization is made, is off by at most about n epsilon.
        var tolerance = design.RowCount * Epsilon;
        var qr = ScaledQr.Of(design);
        return qr.Triangle.FirstDependence(tolerance) is var (column, earlier)
            ? FitChecks.Dependent(design.Names[column], [.. earlier.Select(k => design.Names[k])])
            : new LeastSquaresFit(design, y, qr);
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
}
