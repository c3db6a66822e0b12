using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>How often to look at a dough, and what looking seldom costs.</summary>
public static class LookSpacing
{
    /// <summary>
    /// The gap between looks, in standard deviations of the rise time, up to which the middle of the interval may stand
    /// for the time (rule of thumb, common practice); it adds 1 % to the spread. Wider ones are kept as intervals.
    /// </summary>
    public const double WidestInSd = 0.5;

    /// <summary>Minutes between looks once the dough is near (common practice, no source).</summary>
    public const double UsualMin = 10;

    /// <summary>How near that is: within this many percent of the time expected (common practice, no source).</summary>
    public const double NearPct = 25;

    /// <summary>
    /// The standard deviation that looks every so many minutes add to a time: gap / root of 12, that of a number
    /// anywhere in the gap alike. 10 minutes add 2.9.
    /// </summary>
    public static double AddedSd(double gapMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(gapMin);
        return gapMin / Math.Sqrt(12);
    }

    /// <summary>By how many percent looks every so many minutes widen the spread of a rise time.</summary>
    /// <param name="gapMin">Minutes between looks.</param>
    /// <param name="riseSdMin">Standard deviation of the rise time itself, in minutes, more than 0.</param>
    public static double SpreadAddedPct(double gapMin, double riseSdMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(riseSdMin);
        return 100 * ((double.Hypot(riseSdMin, AddedSd(gapMin)) / riseSdMin) - 1);
    }

    /// <summary>The widest gap, in minutes, that widens the spread of a rise time by no more than so many percent.</summary>
    public static double WidestGap(double riseSdMin, double spreadAddedPct)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(riseSdMin);
        ArgumentOutOfRangeException.ThrowIfNegative(spreadAddedPct);
        var factor = 1 + (spreadAddedPct / 100);
        return riseSdMin * Math.Sqrt(12 * ((factor * factor) - 1));
    }

    /// <summary>When to look, in minutes: every <see cref="UsualMin"/> while the dough is near the time expected.</summary>
    public static ImmutableArray<double> Schedule(double expectedMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(expectedMin);
        var first = Math.Floor(expectedMin * (1 - (NearPct / 100)));
        var looks = 1 + (int)Math.Ceiling(((expectedMin * (1 + (NearPct / 100))) - first) / UsualMin);
        return [.. Enumerable.Range(0, looks).Select(look => first + (look * UsualMin))];
    }

    /// <summary>The most looks that a rise is worth; past it they lie further apart. Our own choice.</summary>
    public const int MostLooks = 12;

    /// <summary>
    /// When to look, in minutes, at a dough that is to be ready in a range of times: first one gap before the soonest,
    /// so that a look finds it not ready, then every <see cref="UsualMin"/> until the latest. Where that makes more than
    /// <see cref="MostLooks"/>, the gap is the next multiple of five minutes that does not.
    /// </summary>
    /// <param name="soonestMin">The soonest that has to be reckoned with, not negative.</param>
    /// <param name="latestMin">The latest, not below the soonest.</param>
    public static ImmutableArray<double> Between(double soonestMin, double latestMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(soonestMin);
        ArgumentOutOfRangeException.ThrowIfLessThan(latestMin, soonestMin);
        const double step = 5;
        var needed = (latestMin - soonestMin + step) / (MostLooks - 2);
        var gap = Math.Max(UsualMin, step * Math.Ceiling(needed / step));
        var first = Math.Max(step * Math.Floor((soonestMin - gap) / step), Math.Min(step, Math.Floor(soonestMin)));
        var looks = 1 + (int)Math.Ceiling((latestMin - first) / gap);
        return [.. Enumerable.Range(0, looks).Select(look => first + (look * gap))];
    }
}
