namespace BakeInsights.Inference;

/// <summary>A fitted straight line, about the middle of its data.</summary>
/// <param name="Middle">The mean of the predictor.</param>
/// <param name="Length">The root of the predictor's sum of squares about it.</param>
/// <param name="Range">The least and the largest value of the predictor.</param>
/// <param name="Level">The line at the middle.</param>
/// <param name="Slope">The slope.</param>
/// <param name="Rounding">What the sum that makes the slope can be off by, through rounding of the response.</param>
internal sealed record CalibrationLine(
    double Middle, double Length, Interval Range, Term Level, Term Slope, double Rounding)
{
    /// <summary>Whether the slope is zero, as far as the numbers' digits go.</summary>
    public bool IsLevel => Math.Abs(Slope.Estimate) * Length <= Rounding;

    /// <summary>Takes a fit for a line.</summary>
    /// <exception cref="ArgumentException">
    /// The fit has other columns than a constant of ones and the predictor.
    /// </exception>
    public static CalibrationLine Of(LeastSquaresFit fit, string predictor)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var place = fit.Design.IndexOf(predictor);
        var constant = 1 - place;
        if (fit.Terms.Count != 2 || fit.Design.Columns[constant].Values.Any(v => v != 1))
        {
            throw new ArgumentException(
                $"A calibration line has a constant and {predictor} for columns, and no others.", nameof(fit));
        }

        var x = fit.Design.Columns[place].Values;
        var middle = x.Average();
        var weights = new double[2];
        (weights[constant], weights[place]) = (1, middle);
        return new CalibrationLine(
            middle,
            Math.Sqrt(x.Sum(v => (v - middle) * (v - middle))),
            new Interval(x.Min(), x.Max()),
            fit.Combination(weights),
            fit.Terms[place],
            (fit.N + 2) * LeastSquares.Epsilon * fit.Response.Max(Math.Abs));
    }
}
