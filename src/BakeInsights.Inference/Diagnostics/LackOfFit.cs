namespace BakeInsights.Inference;

/// <summary>Checks the shape of a fit against rows that repeat the same settings.</summary>
public static class LackOfFit
{
    /// <summary>
    /// The F test of what the settings' own means differ from the fit, against the spread of rows of one setting.
    /// </summary>
    /// <remarks>Draper and Smith (1998), Applied Regression Analysis, 3rd ed., section 2.1.</remarks>
    /// <returns>
    /// The check, or a problem: no setting is repeated, there are no more settings than columns, or rows of one setting
    /// never differ.
    /// </returns>
    public static Attempt<Diagnostic> FromReplicates(LeastSquaresFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var settings = Enumerable.Range(0, fit.N)
            .GroupBy(row => string.Join(';', fit.Design.Row(row).Select(Key)))
            .Select(rows => rows.ToArray()).ToArray();
        var pureDf = fit.N - settings.Length;
        var lackDf = settings.Length - fit.Terms.Count;
        if (pureDf == 0 || lackDf <= 0)
        {
            return new FitProblem(
                FitProblemKind.NoReplicates,
                fit.Design.Names,
                pureDf == 0
                    ? "No two rows have the same settings, so spread can't be told from a wrong shape."
                    : $"There are {settings.Length} settings for {fit.Terms.Count} columns, which fit any data.",
                pureDf == 0 ? "Repeat some settings." : "Add rows at other settings.");
        }

        var (pure, lack) = (0.0, 0.0);
        foreach (var rows in settings)
        {
            double[] weights = [.. rows.Select(row => fit.Weights?[row] ?? 1)];
            double[] residuals = [.. rows.Select(row => fit.Residuals[row])];
            var mean = residuals.Zip(weights, (r, w) => r * w).Sum() / weights.Sum();
            pure += residuals.Zip(weights, (r, w) => w * (r - mean) * (r - mean)).Sum();
            lack += weights.Sum() * mean * mean;
        }

        if (pure <= fit.N * LeastSquares.Epsilon * lack || fit.ResidualSumOfSquares == 0)
        {
            return new FitProblem(
                FitProblemKind.ZeroSpread,
                [LeastSquares.ResponseName],
                "Rows of the same settings never differ, so there is no spread to hold the shape against.",
                "Repeat settings as runs of their own, not as copies of one result.");
        }

        var f = lack / lackDf / (pure / pureDf);
        return Diagnostic.Test(
            "lack of fit", f, $"F with {lackDf} and {pureDf} degrees of freedom", Tails.FisherUpper(f, lackDf, pureDf),
            "The settings' own means leave the fitted shape by more than repeated rows differ",
            "The fitted shape is as near to the settings' own means as repeated rows let it be");
    }

    /// <summary>The bits of a number, those of minus zero being zero's.</summary>
    private static long Key(double value) => BitConverter.DoubleToInt64Bits(value + 0.0);
}
