namespace BakeInsights.Inference;

/// <summary>The chart of single values and their moving ranges: is the process the same throughout?</summary>
/// <remarks>
/// The standard deviation comes from the ranges of neighbours, so that a drift doesn't widen the limits. Assumes that
/// values are independent and near normal. NIST/SEMATECH, e-Handbook of Statistical Methods, section 6.3.2.2.
/// </remarks>
public sealed record IndividualsChart
{
    private IndividualsChart(IReadOnlyList<double> values, double[] ranges)
    {
        Values = [.. values];
        MovingRanges = ranges;
        Centre = values.Average();
        MeanRange = ranges.Average();
        StandardDeviation = MeanRange / ControlConstants.MeanRange;
        Limits = Interval.Around(Centre, ControlConstants.Width * StandardDeviation);
        RangeLimit = ControlConstants.RangeLimit * MeanRange;
        OutOfLimits = [.. Enumerable.Range(0, values.Count).Where(i => !Limits.Contains(values[i]))];
        RangesOutOfLimit = [.. Enumerable.Range(1, ranges.Length).Where(i => ranges[i - 1] > RangeLimit)];
    }

    /// <summary>The values in order of time.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>The ranges of neighbours, the first being that of the first two values.</summary>
    public IReadOnlyList<double> MovingRanges { get; }

    /// <summary>The mean of the values.</summary>
    public double Centre { get; }

    /// <summary>The mean of the moving ranges.</summary>
    public double MeanRange { get; }

    /// <summary>The spread of a value from one time to the next: the mean range over 2 / root pi.</summary>
    public double StandardDeviation { get; }

    /// <summary>Three standard deviations about the centre.</summary>
    public Interval Limits { get; }

    /// <summary>The upper limit of a moving range; the lower is 0.</summary>
    public double RangeLimit { get; }

    /// <summary>The values beyond the limits, counted from 0.</summary>
    public IReadOnlyList<int> OutOfLimits { get; }

    /// <summary>The values whose range from the one before is above the limit, counted from 0.</summary>
    public IReadOnlyList<int> RangesOutOfLimit { get; }

    /// <summary>Draws the chart.</summary>
    /// <param name="values">The values in order of time, at least two.</param>
    /// <returns>The chart, or a problem: too few values, a missing one, or none that differs from the last.</returns>
    public static Attempt<IndividualsChart> Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (ControlChecks.Find(values, 2) is { } problem)
        {
            return problem;
        }

        double[] ranges = [.. values.Skip(1).Zip(values, (next, last) => Math.Abs(next - last))];
        return Array.TrueForAll(ranges, r => r == 0) ? ControlChecks.NoSpread() : new IndividualsChart(values, ranges);
    }

    /// <summary>The runs of values that a set of rules takes for a sign of change.</summary>
    public IReadOnlyList<RunSignal> Signals(IReadOnlyList<RunRule> rules) =>
        RunSignal.Find(Values, Centre, StandardDeviation, rules);
}
