namespace BakeInsights.Inference;

/// <summary>Checks whether the residual spread is the same everywhere.</summary>
public static class ConstantSpread
{
    /// <summary>
    /// The test of Breusch and Pagan in the form that doesn't need normal errors: rows times R-squared of the squared
    /// residuals on the columns.
    /// </summary>
    /// <remarks>
    /// Breusch and Pagan (1979), Econometrica 47, 1287-1294; studentised by Koenker (1981), A note on studentizing a
    /// test for heteroscedasticity, Journal of Econometrics 17, 107-112. The reference is one of many rows.
    /// </remarks>
    /// <returns>
    /// The check, or a problem: the fit is perfect, only the level was fitted, or the squared residuals don't vary.
    /// </returns>
    public static Attempt<Diagnostic> BreuschPagan(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (Diagnostic.PerfectFit(fit) is { } problem)
        {
            return problem;
        }

        double[] squares = [.. fit.Residuals.Select((r, i) => r * r * (fit.Weights?[i] ?? 1))];
        return Auxiliary(fit.Design, squares).TryGet(out var auxiliary, out var failure)
            ? Judged(auxiliary, squares, fit.Design)
            : failure;
    }

    /// <summary>The squares on the columns and a constant, unless the columns already make one up.</summary>
    private static Attempt<LeastSquaresFit> Auxiliary(Design design, double[] squares)
    {
        if (design.HasConstant)
        {
            return LeastSquares.Fit(design, squares);
        }

        // A name longer than any column's own is no column's.
        var name = $"level beside {string.Join(", ", design.Names)}";
        var level = new DesignColumn(name, DesignColumn.Constant(design.RowCount).Values);
        var wider = LeastSquares.Fit(new Design([.. design.Columns, level]), squares);
        return wider.Succeeded ? wider : LeastSquares.Fit(design, squares);
    }

    private static Attempt<Diagnostic> Judged(LeastSquaresFit auxiliary, double[] squares, Design design)
    {
        var df = auxiliary.Terms.Count - 1;
        var total = TotalSumOfSquares.About(squares, null, centred: true).High;
        if (df == 0 || total == 0)
        {
            return new FitProblem(
                df == 0 ? FitProblemKind.TooFewColumns : FitProblemKind.NoSpread,
                design.Names,
                df == 0 ? "There is only a level, so the spread can't follow a column."
                    : "All residuals are of one size, so their spread can't follow a column.",
                "Ask this of a fit with a column that varies, and with more rows.");
        }

        var statistic = auxiliary.N * Math.Max(0, 1 - (auxiliary.ResidualSumOfSquares / total));
        return Diagnostic.Test(
            "Breusch-Pagan", statistic, $"chi-square with {df} degrees of freedom", Tails.ChiSquareUpper(statistic, df),
            "The residual spread changes with the columns", "Nothing says that the residual spread changes");
    }
}
