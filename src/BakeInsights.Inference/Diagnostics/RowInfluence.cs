namespace BakeInsights.Inference;

/// <summary>How far a row lies off, and how much it moves the fit.</summary>
/// <param name="Row">The row, counted from 0.</param>
/// <param name="Leverage">The weight of the row's response in its own fitted value, 0 to 1.</param>
/// <param name="Studentised">
/// The residual over its own standard error; null if the fit is perfect or the row has leverage 1.
/// </param>
/// <param name="DeletionStudentised">
/// The distance of the response from the fit of all other rows, over its standard error: Student's t with one degree of
/// freedom less than the residual's; null also if the others have no residual spread left.
/// </param>
/// <param name="CooksDistance">
/// The squared distance by which leaving the row out moves the coefficients, in units of their joint uncertainty. Cook
/// (1977), Technometrics 19, 15-18.
/// </param>
public sealed record RowInfluence(
    int Row, double Leverage, double? Studentised, double? DeletionStudentised, double? CooksDistance)
{
    /// <summary>The influence of every row, in their order.</summary>
    /// <remarks>
    /// Formulas: Cook and Weisberg (1982), Residuals and Influence in Regression, sections 2.2 and 3.2.
    /// </remarks>
    public static IReadOnlyList<RowInfluence> Of(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return Array.AsReadOnly(Enumerable.Range(0, fit.N).Select(row => Of(fit, row)).ToArray());
    }

    private static RowInfluence Of(LeastSquaresFit fit, int row)
    {
        var leverage = fit.Leverage[row];
        var free = 1 - leverage;
        if (fit.ResidualSumOfSquares == 0 || free <= fit.N * LeastSquares.Epsilon)
        {
            return new RowInfluence(row, leverage, null, null, null);
        }

        var residual = Math.Sqrt(fit.Weights?[row] ?? 1) * fit.Residuals[row];
        var studentised = residual / (fit.ResidualStandardDeviation * Math.Sqrt(free));
        double df = fit.ResidualDegreesOfFreedom;
        var rest = df - (studentised * studentised);
        double? deletion = df > 1 && rest > fit.N * LeastSquares.Epsilon * df
            ? studentised * Math.Sqrt((df - 1) / rest)
            : null;
        return new RowInfluence(
            row, leverage, studentised, deletion, studentised * studentised * leverage / (fit.Terms.Count * free));
    }
}
