using System.Globalization;

namespace BakeInsights.Inference;

/// <summary>The unknown value of a predictor that belongs to readings of the response: calibration by a line.</summary>
/// <remarks>
/// The set holds each value at which the readings' mean can't be told from the line: Fieller (1954), Journal of the
/// Royal Statistical Society B 16, 175-185; Draper and Smith (1998), Applied Regression Analysis, 3rd ed., section 3.2.
/// Several readings at the unknown value add their own spread to the line's. Assumes that new readings scatter as the
/// line's.
/// </remarks>
/// <param name="Estimate">The value at which the line meets the readings' mean.</param>
/// <param name="Set">The confidence set of the value.</param>
/// <param name="StandardDeviation">The spread of one reading, from the line and the readings together.</param>
/// <param name="DegreesOfFreedom">The degrees of freedom of that spread.</param>
/// <param name="Caveats">What has to be said with the set, one sentence each; none if all is well.</param>
public sealed record InversePrediction(
    double Estimate,
    RatioInterval Set,
    double StandardDeviation,
    double DegreesOfFreedom,
    IReadOnlyList<string> Caveats)
{
    /// <summary>Finds the value that belongs to one or more readings.</summary>
    /// <param name="fit">A fit of the response on a constant and the predictor, and nothing else.</param>
    /// <param name="predictor">The predictor's name.</param>
    /// <param name="readings">The readings of the response at the one unknown value.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>The value, or a problem: a reading is missing, or the slope is zero.</returns>
    /// <exception cref="ArgumentException">
    /// The fit has other columns, there is no reading, or the level is not between 0 and 1.
    /// </exception>
    public static Attempt<InversePrediction> Of(
        LeastSquaresFit fit, string predictor, IReadOnlyList<double> readings, double level)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count == 0)
        {
            throw new ArgumentException("There is no reading.", nameof(readings));
        }

        if (readings.Any(y => !double.IsFinite(y)))
        {
            return new FitProblem(
                FitProblemKind.MissingValue,
                ["readings"],
                "A reading is not a finite number.",
                "Give the missing reading or leave it out.");
        }

        var mean = readings.Average();
        return Solve(fit, predictor, mean, readings.Sum(y => (y - mean) * (y - mean)), readings.Count, level);
    }

    /// <summary>Finds the value at which the mean of endlessly many readings is a given number.</summary>
    /// <param name="fit">A fit of the response on a constant and the predictor, and nothing else.</param>
    /// <param name="predictor">The predictor's name.</param>
    /// <param name="mean">The mean.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>The value, or a problem: the mean is missing, or the slope is zero.</returns>
    /// <exception cref="ArgumentException">The fit has other columns, or the level is not between 0 and 1.</exception>
    public static Attempt<InversePrediction> OfMean(LeastSquaresFit fit, string predictor, double mean, double level) =>
        double.IsFinite(mean) ? Solve(fit, predictor, mean, 0, null, level) : new FitProblem(
            FitProblemKind.MissingValue, ["mean"], "The mean is not a finite number.", "Give the mean.");

    private static Attempt<InversePrediction> Solve(
        LeastSquaresFit fit, string predictor, double mean, double scatter, int? count, double level)
    {
        var line = CalibrationLine.Of(fit, predictor);
        if (line.IsLevel)
        {
            return new FitProblem(
                FitProblemKind.NoSpread,
                [predictor],
                $"The slope of {predictor} is zero, so readings say nothing about it.",
                $"Calibrate with rows in which the response changes with {predictor}.");
        }

        // The readings' own scatter joins the residuals', and all standard errors go with the joint spread.
        var df = fit.ResidualDegreesOfFreedom + Math.Max((count ?? 1) - 1, 0);
        var deviation = Math.Sqrt((fit.ResidualSumOfSquares + scatter) / df);
        var numerator = new Term(
            "distance",
            mean - line.Level.Estimate,
            deviation * Math.Sqrt((1.0 / fit.N) + (count is { } m ? 1.0 / m : 0)),
            df);
        var slope = new Term(predictor, line.Slope.Estimate, deviation / line.Length, df);

        // About the data's middle the level and the slope are independent, and no digits are lost to a far zero.
        var set = RatioInterval.Fieller(numerator, slope, 0, level).Shifted(line.Middle);
        var estimate = line.Middle + (numerator.Estimate / slope.Estimate);
        return new InversePrediction(
            estimate, set, deviation, df, [.. FindCaveats(predictor, set, line.Range, estimate, level)]);
    }

    private static IEnumerable<string> FindCaveats(
        string predictor, RatioInterval set, Interval range, double estimate, double level)
    {
        var percent = (100 * level).ToString("G4", CultureInfo.InvariantCulture);
        if (set.Kind == RatioSetKind.WholeLine)
        {
            yield return $"The slope can't be told from zero, so at {percent} % the readings fit every value of "
                + $"{predictor}.";
        }

        if (set.Kind is RatioSetKind.TwoRays or RatioSetKind.OneRay)
        {
            yield return $"The slope can't be told from zero, so at {percent} % the readings bound {predictor} to one "
                + "side at most: the set has no end.";
        }

        if (!range.Contains(estimate))
        {
            yield return $"The estimate is outside the calibrated range of {predictor}, where the line is a guess.";
        }
    }
}
