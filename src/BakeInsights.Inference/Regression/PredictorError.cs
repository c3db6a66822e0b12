namespace BakeInsights.Inference;

/// <summary>Fits on a column that isn't known exactly.</summary>
/// <remarks>
/// Two kinds have to be kept apart. Classical: the column is a reading, the true value plus an error of its own, as
/// from a probe. The slope on readings is then too flat and has to be corrected. Berkson: the column is a setting, and
/// the true value is the setting plus an error, as with a cup that is filled to a mark. The slope on settings is then
/// right, and correcting it would be wrong; the error only adds to the residual spread. Carroll, Ruppert, Stefanski and
/// Crainiceanu (2006), Measurement Error in Nonlinear Models, 2nd ed., Chapman and Hall, chapters 1 and 4.
/// </remarks>
public static class PredictorError
{
    /// <summary>
    /// Corrects a fit on readings by regression calibration. The true values are taken to be normal about what the
    /// other columns say, the errors to be normal, of the given spread, and independent of everything else.
    /// </summary>
    /// <param name="fit">The fit on the readings.</param>
    /// <param name="column">The column of readings; no other column may be computed from it.</param>
    /// <param name="errorDeviation">The standard deviation of a reading about the true value, known, above 0.</param>
    /// <returns>The corrected fit, or a problem: the readings vary no more than their error alone would.</returns>
    /// <exception cref="ArgumentException">No column has the name, or the deviation isn't above 0.</exception>
    public static Attempt<CalibratedFit> Classical(LeastSquaresFit fit, string column, double errorDeviation)
    {
        var place = Checked(fit, column, errorDeviation);
        var readings = fit.Design.Columns[place];
        var (deviation, df, onOthers) = Spread(fit, place);
        var reliability = 1 - Math.Pow(errorDeviation / deviation, 2);
        return reliability > 0
            ? new CalibratedFit(fit, place, errorDeviation, reliability, df, onOthers)
            : new FitProblem(
                FitProblemKind.ErrorExceedsSpread,
                [readings.Name],
                $"Column {readings.Name} varies by {Diagnostic.Short(deviation)} beside the other columns, no more "
                    + $"than its error of {Diagnostic.Short(errorDeviation)}.",
                $"Spread {readings.Name} wider, or measure it more closely.");
    }

    /// <summary>Tells how much of a fit's residual spread comes from settings that are met with an error.</summary>
    /// <param name="fit">The fit on the settings. Its terms and intervals stand as they are.</param>
    /// <param name="column">The column of settings; the response has to be straight in it.</param>
    /// <param name="errorDeviation">The standard deviation of the true value about the setting, known, above 0.</param>
    /// <exception cref="ArgumentException">No column has the name, or the deviation isn't above 0.</exception>
    public static BerksonScatter Berkson(LeastSquaresFit fit, string column, double errorDeviation)
    {
        var slope = fit.Terms[Checked(fit, column, errorDeviation)];
        var carried = Math.Abs(slope.Estimate) * errorDeviation;
        var left = Math.Pow(fit.ResidualStandardDeviation, 2) - (carried * carried);
        return new BerksonScatter(slope, fit.ResidualStandardDeviation, carried, left >= 0 ? Math.Sqrt(left) : null);
    }

    private static int Checked(LeastSquaresFit fit, string column, double errorDeviation)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (!(errorDeviation > 0 && double.IsFinite(errorDeviation)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(errorDeviation), errorDeviation, "The error's standard deviation is above 0.");
        }

        return fit.Design.IndexOf(column);
    }

    /// <summary>How the readings vary beside the other columns.</summary>
    private static (double Deviation, int DegreesOfFreedom, LeastSquaresFit? OnOthers) Spread(
        LeastSquaresFit fit, int place)
    {
        var readings = fit.Design.Columns[place];
        if (fit.Design.Columns.Count == 1)
        {
            return (Math.Sqrt(readings.Values.Sum(w => w * w) / fit.N), fit.N, null);
        }

        // The fit has shown that the readings don't depend on the other columns, so this one can't fail.
        var onOthers = LeastSquares.Fit(fit.Design.Without(readings.Name), readings.Values).Value;
        return (onOthers.ResidualStandardDeviation, onOthers.ResidualDegreesOfFreedom, onOthers);
    }
}
