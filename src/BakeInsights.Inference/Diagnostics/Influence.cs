namespace BakeInsights.Inference;

/// <summary>Checks for single rows that lie far off or carry a fit.</summary>
public static class Influence
{
    /// <summary>The row whose own response weighs most in its fitted value.</summary>
    public static Diagnostic LargestLeverage(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var row = Enumerable.Range(0, fit.N).MaxBy(i => fit.Leverage[i]);
        var ratio = fit.Leverage[row] * fit.N / fit.Terms.Count;
        var concern = ratio > Thresholds.LeverageOverMean.Value;
        return new Diagnostic(
            "leverage", fit.Leverage[row], null, null, Thresholds.LeverageOverMean, concern,
            $"Row {row + 1} has the highest leverage, {Diagnostic.Short(ratio)} times the mean: "
                + (concern ? "it lies apart from the others in its columns."
                    : "no row lies far apart in its columns."));
    }

    /// <summary>
    /// The row farthest from the fit of all others, by Student's t with Bonferroni's bound over the rows.
    /// </summary>
    /// <returns>The check, or a problem: the fit is perfect, or no row can be judged by the others.</returns>
    public static Attempt<Diagnostic> LargestResidual(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (Diagnostic.PerfectFit(fit) is { } problem)
        {
            return problem;
        }

        var farthest = RowInfluence.Of(fit).Where(row => row.DeletionStudentised is not null)
            .MaxBy(row => Math.Abs(row.DeletionStudentised!.Value));
        if (farthest is not { DeletionStudentised: { } t })
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                fit.Design.Names,
                "Without any one row, the others leave no residual spread to judge it by.",
                "Add rows, or leave columns out.");
        }

        var df = fit.ResidualDegreesOfFreedom - 1;
        var p = Math.Min(1, fit.N * Tails.StudentTwoSided(t, df));
        var where = $"Row {farthest.Row + 1} lies farthest off, {Diagnostic.Short(Math.Abs(t))} standard errors from "
            + "what the other rows say";
        return Diagnostic.Test(
            "largest residual", t, $"Student's t with {df} degrees of freedom, times {fit.N} rows", p,
            $"{where}: more than chance explains", $"{where}: among so many rows that can be chance");
    }

    /// <summary>The row that moves the coefficients most.</summary>
    /// <returns>The check, or a problem: the fit is perfect.</returns>
    public static Attempt<Diagnostic> LargestCooksDistance(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (Diagnostic.PerfectFit(fit) is { } problem)
        {
            return problem;
        }

        // A row of leverage 1 has no distance; some row has one, for leverages sum to fewer than the rows.
        var largest = RowInfluence.Of(fit).MaxBy(row => row.CooksDistance ?? double.NegativeInfinity)!;
        var distance = largest.CooksDistance!.Value;
        var concern = distance > Thresholds.CooksDistance.Value;
        return new Diagnostic(
            "Cook's distance", distance, null, null, Thresholds.CooksDistance, concern,
            $"Row {largest.Row + 1} moves the coefficients most, Cook's distance {Diagnostic.Short(distance)}: "
                + (concern ? "see what the fit says without it." : "no single row carries the fit."));
    }
}
