namespace BakeInsights.Inference;

/// <summary>Least squares for a model that is not linear in its parameters.</summary>
/// <remarks>
/// The search is Levenberg and Marquardt's, scaled by the columns of derivatives: Moré (1978), The Levenberg-Marquardt
/// algorithm: implementation and theory, in Numerical Analysis, Lecture Notes in Mathematics 630, 105-116; damping
/// after Nielsen (1999), Damping parameter in Marquardt's method, Technical University of Denmark, IMM-REP-1999-05.
/// It is run from the start with several dampings and scalings, and the least sum of squares found is taken. Standard
/// errors are those of the linear model at the solution: Bates and Watts (1988), Nonlinear Regression Analysis and Its
/// Applications, chapter 2. Assumptions: rows scatter about the model independently, normally, with one spread. A
/// least sum of squares is only known to be least nearby: try other starts.
/// </remarks>
public static class NonlinearLeastSquares
{
    internal const string ResponseName = "response";

    /// <summary>Fits a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="predictors">The predictors, which the model gets by row in this order.</param>
    /// <param name="response">The response by row.</param>
    /// <param name="start">
    /// Where to begin: a value for each parameter, near enough that the model has the right shape.
    /// </param>
    /// <returns>
    /// The fit, or a problem: a number is missing, there are no more rows than parameters, the model has no finite
    /// value at the start, the search came to no end, or a parameter isn't determined where it ended.
    /// </returns>
    /// <exception cref="ArgumentException">
    /// The response has another number of rows than the predictors, or the start another number of values than the
    /// model has parameters.
    /// </exception>
    public static Attempt<NonlinearFit> Fit(
        NonlinearModel model, Design predictors, IReadOnlyList<double> response, IReadOnlyList<double> start)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(predictors);
        ArgumentNullException.ThrowIfNull(response);
        ArgumentNullException.ThrowIfNull(start);
        if (response.Count != predictors.RowCount)
        {
            throw new ArgumentException(
                $"The response has {response.Count} rows and the predictors {predictors.RowCount}.", nameof(response));
        }

        if (start.Count != model.Parameters.Count)
        {
            throw new ArgumentException(
                $"The start has {start.Count} values and the model {model.Parameters.Count} parameters.",
                nameof(start));
        }

        var y = new DesignColumn(ResponseName, response);
        var rows = new NonlinearRows(model, predictors, y);
        if (NonlinearChecks.Find(model, predictors, y) is { } problem)
        {
            return problem;
        }

        double[] from = [.. start];
        if (rows.Residuals(from) is null)
        {
            return NonlinearChecks.NoStart(model);
        }

        var found = NonlinearSearch.Find(rows, from);
        return found switch
        {
            null => NonlinearChecks.NoEnd(model),
            { Undetermined: { } place } => NonlinearChecks.Undetermined(model.Parameters[place]),
            _ => new NonlinearFit(model, predictors, rows, found),
        };
    }
}
