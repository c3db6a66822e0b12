namespace BakeInsights.Inference;

/// <summary>Intervals of differences that were picked because they are large, and still hold as they say.</summary>
public static class SimultaneousInterval
{
    /// <summary>The interval of one of all differences between pairs of group means.</summary>
    /// <remarks>
    /// All pairs at once hold with the level for means of equally many rows, and with more than it for others:
    /// Tukey (1953); Kramer (1956), Biometrics 12, 307-310. Two groups have Student's own interval.
    /// </remarks>
    /// <param name="difference">The difference with its standard error.</param>
    /// <param name="groups">How many groups were compared, two or more.</param>
    /// <param name="level">The probability that all intervals hold, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is one group, or the level is not between 0 and 1.</exception>
    public static Interval OfPairs(Term difference, int groups, double level)
    {
        ArgumentNullException.ThrowIfNull(difference);
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 2);
        var factor = StudentizedRange.Quantile(level, groups, difference.DegreesOfFreedom) / Math.Sqrt(2);
        return Interval.Around(difference.Estimate, factor * difference.StandardError);
    }

    /// <summary>The interval of one of all combinations of some coefficients, such as any two points of a curve.</summary>
    /// <remarks>Scheffé (1953), Biometrika 40, 87-104: all combinations at once hold with the level.</remarks>
    /// <param name="combination">The combination with its standard error.</param>
    /// <param name="coefficients">How many coefficients are combined, one or more.</param>
    /// <param name="level">The probability that all intervals hold, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no coefficient, or the level is not between 0 and 1.</exception>
    public static Interval OfCombinations(Term combination, int coefficients, double level)
    {
        ArgumentNullException.ThrowIfNull(combination);
        ArgumentOutOfRangeException.ThrowIfLessThan(coefficients, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(level);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(level, 1);
        var critical = FisherQuantile.Of(1 - level, coefficients, combination.DegreesOfFreedom);
        return Interval.Around(combination.Estimate, Math.Sqrt(coefficients * critical) * combination.StandardError);
    }
}
