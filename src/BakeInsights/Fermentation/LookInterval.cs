namespace BakeInsights;

/// <summary>
/// When a dough reached a level of the press test, as far as looks can tell: after the last look that was below it, and
/// no later than the first that was not.
/// </summary>
public sealed record LookInterval
{
    /// <summary>
    /// The widest interval, in percent of its upper end, that still says when the dough was ready (judgement); wider
    /// ones are worth little.
    /// </summary>
    public const double WidestPct = 30;

    private LookInterval(PressTest level, double afterMin, double? byMin, bool isDoubted)
    {
        Level = level;
        AfterMin = afterMin;
        ByMin = byMin;
        IsDoubted = isDoubted;
    }

    /// <summary>The level that was waited for.</summary>
    public PressTest Level { get; }

    /// <summary>The dough was still below the level here, in minutes; 0 when it was there at the first look.</summary>
    public double AfterMin { get; }

    /// <summary>The dough had reached the level here, in minutes; null when no look found it there.</summary>
    public double? ByMin { get; }

    /// <summary>
    /// Whether a later look fell back below the level. A dough does not go back, so one of the looks was wrong; the
    /// interval spans both readings of it.
    /// </summary>
    public bool IsDoubted { get; }

    /// <summary>Whether the interval is open or wider than <see cref="WidestPct"/> of its upper end.</summary>
    public bool IsWide => ByMin is not { } by || by - AfterMin > WidestPct / 100 * by;

    /// <summary>When the dough was ready: from <see cref="PressTest.SlowReturn"/> on.</summary>
    public static LookInterval Ready(params ReadOnlySpan<Look> looks) => Reaching(PressTest.SlowReturn, looks);

    /// <summary>When the dough reached a level; in any order of the looks. Without a look nothing is known: from 0 on.</summary>
    public static LookInterval Reaching(PressTest level, params ReadOnlySpan<Look> looks)
    {
        List<Look> below = [];
        List<Look> there = [];
        foreach (var look in looks)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(look.Minutes, nameof(looks));
            (look.Outcome < level ? below : there).Add(look);
        }

        if (there.Count == 0)
        {
            return new(level, below.Select(look => look.Minutes).DefaultIfEmpty(0).Max(), null, isDoubted: false);
        }

        var firstThere = there.Min(look => look.Minutes);
        var lastBelow = below.Select(look => look.Minutes).DefaultIfEmpty(0).Max();
        var after = below.Select(look => look.Minutes).Where(minutes => minutes < firstThere).DefaultIfEmpty(0).Max();
        var isDoubted = below.Count > 0 && lastBelow >= firstThere;
        var settled = there.Select(look => look.Minutes).Where(minutes => !isDoubted || minutes > lastBelow).ToList();
        return new(level, after, settled.Count == 0 ? null : settled.Min(), isDoubted);
    }
}
