namespace BakeInsights.Inference;

/// <summary>The tabular chart of cumulative sums, which tells when a small lasting shift began.</summary>
/// <remarks>
/// Page (1954), Continuous inspection schemes, Biometrika 41, 100-115; NIST/SEMATECH, e-Handbook of Statistical
/// Methods, section 6.3.2.3. Assumes independent values.
/// </remarks>
public sealed record CumulativeSumChart
{
    private CumulativeSumChart(double[] upper, double[] lower, int[] upperRun, int[] lowerRun, double limit)
    {
        (Upper, Lower, UpperRun, LowerRun) = (upper, lower, upperRun, lowerRun);
        UpperSignals = [.. Enumerable.Range(0, upper.Length).Where(i => upper[i] > limit)];
        LowerSignals = [.. Enumerable.Range(0, lower.Length).Where(i => lower[i] > limit)];
    }

    /// <summary>The sums of what values are above target and allowance, never below 0.</summary>
    public IReadOnlyList<double> Upper { get; }

    /// <summary>The sums of what values are below target less allowance, never below 0.</summary>
    public IReadOnlyList<double> Lower { get; }

    /// <summary>How many values the upper sum has been above 0: the shift began that many values ago.</summary>
    public IReadOnlyList<int> UpperRun { get; }

    /// <summary>How many values the lower sum has been above 0.</summary>
    public IReadOnlyList<int> LowerRun { get; }

    /// <summary>The values at which the upper sum is above its limit, counted from 0.</summary>
    public IReadOnlyList<int> UpperSignals { get; }

    /// <summary>The values at which the lower sum is above its limit, counted from 0.</summary>
    public IReadOnlyList<int> LowerSignals { get; }

    /// <summary>Draws the chart.</summary>
    /// <param name="values">The values in order of time.</param>
    /// <param name="target">The mean when all is well.</param>
    /// <param name="allowance">Half the shift to be found, in the values' unit, not negative.</param>
    /// <param name="limit">The sum that counts as a signal, in the values' unit, above 0.</param>
    /// <returns>The chart, or the problem of a missing value or of none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Allowance or limit is out of range.</exception>
    public static Attempt<CumulativeSumChart> Of(
        IReadOnlyList<double> values, double target, double allowance, double limit)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentOutOfRangeException.ThrowIfNegative(allowance);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        if (ControlChecks.Find(values, 1) is { } problem)
        {
            return problem;
        }

        var (upper, upperRun) = Sums(values.Select(v => v - target - allowance));
        var (lower, lowerRun) = Sums(values.Select(v => target - v - allowance));
        return new CumulativeSumChart(upper, lower, upperRun, lowerRun, limit);
    }

    private static (double[] Sums, int[] Runs) Sums(IEnumerable<double> steps)
    {
        var sums = new List<double>();
        var runs = new List<int>();
        foreach (var step in steps)
        {
            sums.Add(Math.Max(0, (sums.Count > 0 ? sums[^1] : 0) + step));
            runs.Add(sums[^1] > 0 ? (runs.Count > 0 ? runs[^1] : 0) + 1 : 0);
        }

        return ([.. sums], [.. runs]);
    }
}
