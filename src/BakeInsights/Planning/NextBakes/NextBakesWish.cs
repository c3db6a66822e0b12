namespace BakeInsights;

/// <summary>What the next bakes are wished for.</summary>
public sealed record NextBakesWish
{
    /// <summary>Bakes that a baker plans ahead at once: common practice, no source.</summary>
    public const int UsualBakes = 4;

    /// <summary>The most that are planned at once; more are better planned again after these. Our own choice.</summary>
    public const int MostBakes = 24;

    private readonly int _bakes = UsualBakes;
    private readonly double? _until;

    /// <summary>How many bakes, 1 to <see cref="MostBakes"/>.</summary>
    public int Bakes
    {
        get => _bakes;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostBakes);
            _bakes = value;
        }
    }

    /// <summary>The question to narrow; null for the one that the journal leaves most open.</summary>
    public NarrowedQuestion? Question { get; init; }

    /// <summary>Dough temperatures that can be made, in °C; null for those that were baked.</summary>
    public SettingLimits? DoughTemperatureC { get; init; }

    /// <summary>Hydrations that can be baked, in percent; null for those that were.</summary>
    public SettingLimits? HydrationPct { get; init; }

    /// <summary>Yeast that can be baked with, in percent of flour as instant; null for what was.</summary>
    public SettingLimits? YeastPct { get; init; }

    /// <summary>Half an interval, in the question's unit, above 0, for which the bakes needed are counted; null for none.</summary>
    public double? Until
    {
        get => _until;
        init
        {
            if (value is { } half)
            {
                ArgumentOutOfRangeException.ThrowIfNegativeOrZero(half, nameof(value));
            }

            _until = value;
        }
    }

    /// <summary>Whose steps the settings take: 0.5 °C or 1 °F.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>The asked limits of a setting.</summary>
    internal SettingLimits? Of(Measure setting) =>
        setting == Measures.DoughTemperature ? DoughTemperatureC : setting == Measures.Hydration ? HydrationPct : YeastPct;
}
