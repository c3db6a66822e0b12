using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>How an estimate varies when the rows are drawn again from the data.</summary>
/// <remarks>
/// Assumes that the drawn units (rows or clusters) are independent and enough of them to stand for the population.
/// Efron and Tibshirani (1993), An Introduction to the Bootstrap, chapters 13 and 14.
/// </remarks>
public sealed class BootstrapDistribution
{
    /// <summary>
    /// Rows or clusters drawn singly, below which 95 % intervals hold the truth in less than 93.5 % of the simulation
    /// in docs/inference.md.
    /// </summary>
    internal const int FewUnits = 80;

    /// <summary>The same for errors drawn again on the same columns.</summary>
    internal const int FewErrors = 26;

    private readonly double[] _ordered;
    private readonly double?[] _jackknife;
    private readonly int _few;

    private BootstrapDistribution(
        string name, double estimate, double[] values, int failed, double?[] jackknife, int few)
    {
        (Name, Estimate, FailedCount, _jackknife, _few) = (name, estimate, failed, jackknife, few);
        Values = Array.AsReadOnly(values);
        _ordered = [.. values.Order()];
        Caveats = Array.AsReadOnly(FindCaveats().ToArray());
    }

    /// <summary>The name of the quantity.</summary>
    public string Name { get; }

    /// <summary>The estimate from the data as they are.</summary>
    public double Estimate { get; }

    /// <summary>The estimates from the resamples, in their order, without those that failed.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>How many resamples gave no estimate.</summary>
    public int FailedCount { get; }

    /// <summary>What has to be said with the intervals, one sentence each; none if all is well.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>The standard deviation of the resampled estimates.</summary>
    public double StandardError
    {
        get
        {
            var mean = Values.Average();
            return Math.Sqrt(Values.Sum(v => (v - mean) * (v - mean)) / (Values.Count - 1));
        }
    }

    /// <summary>The mean of the resampled estimates less the estimate.</summary>
    public double Bias => Values.Average() - Estimate;

    /// <summary>The interval between two equal tails of the resampled estimates.</summary>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>The interval, or the problem that there are too few resamples for the level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Attempt<Interval> Percentile(double level)
    {
        Refuse(level);
        return Between((1 - level) / 2, (1 + level) / 2);
    }

    /// <summary>
    /// The interval between tails that are corrected for bias and for a spread that changes with the truth.
    /// </summary>
    /// <remarks>Efron (1987), Better bootstrap confidence intervals, JASA 82, 171-185.</remarks>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>
    /// The interval, or a problem: too few resamples for the level, all of them to one side of the estimate, or an
    /// estimate that can't be made without some row or cluster.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Attempt<Interval> BiasCorrected(double level)
    {
        Refuse(level);
        if (Array.FindIndex(_jackknife, v => v is null) is >= 0 and var unit)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [Name],
                $"Without row or cluster {unit + 1} the data give no {Name}, so the interval can't be corrected.",
                "Add rows like that one, or take the percentile interval.");
        }

        var below = _ordered.Count(v => v < Estimate) + (_ordered.Count(v => v == Estimate) / 2.0);
        if (below == 0 || below == _ordered.Length)
        {
            return new FitProblem(
                FitProblemKind.OutOfRange,
                [Name],
                $"All resamples of {Name} lie to one side of the estimate, so the interval can't be corrected.",
                "Take more resamples, or the percentile interval.");
        }

        var shift = Normal.InvCDF(0, 1, below / _ordered.Length);
        var acceleration = Acceleration();
        double Corrected(double share)
        {
            var z = shift + Normal.InvCDF(0, 1, share);
            return Normal.CDF(0, 1, shift + (z / (1 - (acceleration * z))));
        }

        return Between(Corrected((1 - level) / 2), Corrected((1 + level) / 2));
    }

    /// <summary>Gathers a distribution.</summary>
    /// <param name="name">The name of the quantity.</param>
    /// <param name="estimate">The estimate; null if the data give none.</param>
    /// <param name="replicates">The estimates from resamples; null where one gave none.</param>
    /// <param name="jackknife">The estimates without each unit.</param>
    /// <param name="few">How many units are needed for intervals that are wide enough.</param>
    internal static Attempt<BootstrapDistribution> Of(
        string name, double? estimate, double?[] replicates, double?[] jackknife, int few)
    {
        // Common practice, no source: with half of the resamples gone the rest don't stand for all.
        const double MostFailed = 0.5;
        double[] values = [.. replicates.OfType<double>().Where(double.IsFinite)];
        var failed = replicates.Length - values.Length;
        if (estimate is not { } value || !double.IsFinite(value) || failed > MostFailed * replicates.Length)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [name],
                $"The data, or more than half of the resamples of them, give no {name}.",
                "Add rows.");
        }

        return Array.TrueForAll(values, v => v == values[0])
            ? new FitProblem(
                FitProblemKind.NoSpread,
                [name],
                $"Every resample gives the same {name}, so its uncertainty can't be told from these data.",
                "Add rows that differ.")
            : new BootstrapDistribution(name, value, values, failed, jackknife, few);
    }

    private static void Refuse(double level)
    {
        Tails.RequireLevel(level);
    }

    /// <summary>Efron's acceleration from the estimates without each unit.</summary>
    private double Acceleration()
    {
        double[] values = [.. _jackknife.OfType<double>()];
        var mean = values.Average();
        var largest = values.Max(v => Math.Abs(v - mean));
        if (largest == 0)
        {
            return 0;
        }

        double[] scaled = [.. values.Select(v => (mean - v) / largest)];
        return scaled.Sum(v => v * v * v) / (6 * Math.Pow(scaled.Sum(v => v * v), 1.5));
    }

    /// <summary>
    /// The values at two shares: the one at place (B + 1) x share, interpolated between neighbours. Davison and Hinkley
    /// (1997), Bootstrap Methods and their Application, section 5.2.
    /// </summary>
    private Attempt<Interval> Between(double lower, double upper)
    {
        var (low, high) = ((_ordered.Length + 1) * lower, (_ordered.Length + 1) * upper);
        if (!(low >= 1 && high <= _ordered.Length))
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [Name],
                $"{_ordered.Length} resamples of {Name} don't reach the ends of so wide an interval.",
                "Take more resamples, or a lower level.");
        }

        return new Interval(At(low), At(high));
    }

    private double At(double place)
    {
        var whole = (int)place;
        var next = Math.Min(whole, _ordered.Length - 1);
        return _ordered[whole - 1] + ((place - whole) * (_ordered[next] - _ordered[whole - 1]));
    }

    private IEnumerable<string> FindCaveats()
    {
        if (_jackknife.Length < _few)
        {
            yield return $"There are {_jackknife.Length} rows or clusters to draw from; with fewer than {_few} "
                + "intervals from resampling are too narrow.";
        }

        if (FailedCount > 0)
        {
            yield return $"{FailedCount} of {FailedCount + Values.Count} resamples gave no estimate and are left out.";
        }
    }
}
