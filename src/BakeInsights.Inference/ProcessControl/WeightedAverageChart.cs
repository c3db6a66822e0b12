namespace BakeInsights.Inference;

/// <summary>The chart of exponentially weighted moving averages, which sees small lasting shifts.</summary>
/// <remarks>
/// Roberts (1959), Control chart tests based on geometric moving averages, Technometrics 1, 239-250; NIST/SEMATECH,
/// e-Handbook of Statistical Methods, section 6.3.2.4. Assumes independent values of known spread.
/// </remarks>
public sealed record WeightedAverageChart
{
    private WeightedAverageChart(double[] averages, Interval[] limits, Interval finalLimits) =>
        (Averages, Limits, FinalLimits, OutOfLimits) = (averages, limits, finalLimits,
            [.. Enumerable.Range(0, averages.Length).Where(i => !limits[i].Contains(averages[i]))]);

    /// <summary>The averages: each the weight's share of the newest value and the rest of the average before.</summary>
    public IReadOnlyList<double> Averages { get; }

    /// <summary>The limits of each average, which widen at first, for the start is known exactly.</summary>
    public IReadOnlyList<Interval> Limits { get; }

    /// <summary>What the limits come to in time.</summary>
    public Interval FinalLimits { get; }

    /// <summary>The averages beyond their limits, counted from 0.</summary>
    public IReadOnlyList<int> OutOfLimits { get; }

    /// <summary>Draws the chart.</summary>
    /// <param name="values">The values in order of time.</param>
    /// <param name="target">The mean when all is well.</param>
    /// <param name="standardDeviation">The spread of a value when all is well, above 0.</param>
    /// <param name="weight">The weight of the newest value, above 0 to 1; 0.2 to 0.3 is usual.</param>
    /// <param name="width">The limits' distance in standard deviations of the average; 3 is usual.</param>
    /// <returns>The chart, or the problem of a missing value or of none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Spread, weight or width is out of range.</exception>
    public static Attempt<WeightedAverageChart> Of(
        IReadOnlyList<double> values, double target, double standardDeviation, double weight, double width)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardDeviation);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weight);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weight, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(width);
        if (ControlChecks.Find(values, 1) is { } problem)
        {
            return problem;
        }

        var averages = new double[values.Count];
        var limits = new Interval[values.Count];
        var final = width * standardDeviation * Math.Sqrt(weight / (2 - weight));
        var last = target;
        for (var i = 0; i < averages.Length; i++)
        {
            averages[i] = last = (weight * values[i]) + ((1 - weight) * last);
            limits[i] = Interval.Around(target, final * Math.Sqrt(1 - Math.Pow(1 - weight, 2 * (i + 1))));
        }

        return new WeightedAverageChart(averages, limits, Interval.Around(target, final));
    }
}
