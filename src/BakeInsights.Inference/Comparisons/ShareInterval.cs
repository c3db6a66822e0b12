namespace BakeInsights.Inference;

/// <summary>The interval of a share that was counted.</summary>
public static class ShareInterval
{
    /// <summary>
    /// The exact interval: it holds the true share at least as often as it says, at few cases more often. Clopper and
    /// Pearson (1934), Biometrika 26, 404-413.
    /// </summary>
    /// <param name="hits">How many cases are of the kind, from 0 to <paramref name="cases"/>.</param>
    /// <param name="cases">How many cases there are, at least 1.</param>
    /// <param name="level">The confidence level, between 0 and 1.</param>
    /// <returns>The ends, from 0 to 1.</returns>
    public static Interval Of(int hits, int cases, double level)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cases, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, cases);
        Tails.RequireLevel(level);

        var tail = (1 - level) / 2;
        return new Interval(Low(hits, cases, tail), 1 - Low(cases - hits, cases, tail));
    }

    // The beta quantile by way of F: Abramowitz and Stegun (1964), 26.5.28.
    private static double Low(int hits, int cases, double tail)
    {
        if (hits == 0)
        {
            return 0;
        }

        var rest = cases - hits + 1;
        return hits / (hits + (rest * FisherQuantile.Of(tail, 2 * rest, 2 * hits)));
    }
}
