namespace BakeInsights;

/// <summary>How long something takes: what to expect, and how much sooner or later it may be done.</summary>
public sealed record Duration
{
    /// <summary>A duration with its spread, in minutes.</summary>
    /// <param name="usualMin">What to expect, not negative.</param>
    /// <param name="soonestMin">The soonest that has to be reckoned with, at most the usual.</param>
    /// <param name="latestMin">The latest that has to be reckoned with, at least the usual.</param>
    public Duration(double usualMin, double soonestMin, double latestMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(soonestMin);
        ArgumentOutOfRangeException.ThrowIfLessThan(usualMin, soonestMin);
        ArgumentOutOfRangeException.ThrowIfLessThan(latestMin, usualMin);
        (UsualMin, SoonestMin, LatestMin) = (usualMin, soonestMin, latestMin);
    }

    /// <summary>What to expect, in minutes.</summary>
    public double UsualMin { get; }

    /// <summary>The soonest that has to be reckoned with, in minutes.</summary>
    public double SoonestMin { get; }

    /// <summary>The latest that has to be reckoned with, in minutes.</summary>
    public double LatestMin { get; }

    /// <summary>A duration that the clock decides, such as baking.</summary>
    public static Duration Exactly(double minutes) => new(minutes, minutes, minutes);

    /// <summary>The same thing so many times as long, its spread with it.</summary>
    public Duration Times(double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(factor);
        return new(UsualMin * factor, SoonestMin * factor, LatestMin * factor);
    }

    /// <summary>
    /// One thing after another. Usual times add up; spreads that have nothing to do with each other add as the roots of
    /// their squares do, each side by itself.
    /// </summary>
    public static Duration operator +(Duration first, Duration second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var usual = first.UsualMin + second.UsualMin;
        return new Duration(
            usual,
            usual - double.Hypot(first.UsualMin - first.SoonestMin, second.UsualMin - second.SoonestMin),
            usual + double.Hypot(first.LatestMin - first.UsualMin, second.LatestMin - second.UsualMin));
    }
}
