namespace BakeInsights.Inference;

/// <summary>The interval of a standard deviation.</summary>
public static class SpreadInterval
{
    /// <summary>
    /// The interval from the chi-square distribution, equal tails; for independent normal values, and sensitive to
    /// tails that are heavier. Snedecor and Cochran (1989), Statistical Methods, 8th ed., section 5.11.
    /// </summary>
    /// <param name="standardDeviation">The estimate, 0 or more.</param>
    /// <param name="degreesOfFreedom">Its degrees of freedom, above 0.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    public static Interval Of(double standardDeviation, double degreesOfFreedom, double level)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(standardDeviation);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degreesOfFreedom);
        Tails.RequireLevel(level);

        double End(double upper) => standardDeviation * Math.Sqrt(degreesOfFreedom / ChiSquare(upper, degreesOfFreedom));
        return new Interval(End((1 - level) / 2), End((1 + level) / 2));
    }

    // The tail falls from 1 to 0: double until it is passed, then halve down to neighbouring doubles.
    private static double ChiSquare(double upper, double degrees)
    {
        var (low, high) = (0.0, 1.0);
        while (Tails.ChiSquareUpper(high, degrees) > upper)
        {
            (low, high) = (high, 2 * high);
        }

        for (var middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2)
        {
            (low, high) = Tails.ChiSquareUpper(middle, degrees) > upper ? (middle, high) : (low, middle);
        }

        return high;
    }
}
