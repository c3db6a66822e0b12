namespace BakeInsights;

/// <summary>What a baker wishes of the house formula.</summary>
/// <param name="Goals">The results wished for, at least one, each result once.</param>
public sealed record TuneWish(IReadOnlyList<TuneGoal> Goals)
{
    /// <summary>Dough temperatures that can be made, in °C; null for those that were baked.</summary>
    public SettingLimits? DoughTemperatureC { get; init; }

    /// <summary>Hydrations that can be handled, in percent; null for those that were baked.</summary>
    public SettingLimits? HydrationPct { get; init; }

    /// <summary>Yeast that can be baked with, in percent of flour as instant; null for what was.</summary>
    public SettingLimits? YeastPct { get; init; }

    /// <summary>The house formula; null for the journal's typical dough, the median of each setting.</summary>
    public DoughSettings? House { get; init; }

    /// <summary>Temperatures and water on the day; null for those that the journal knows, as far as it does.</summary>
    public TuneKitchen? Kitchen { get; init; }

    /// <summary>The units in which problems speak.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>The limits asked for.</summary>
    internal IEnumerable<(Measure Setting, SettingLimits Limits)> Limits => new (Measure Setting, SettingLimits? Limits)[]
    {
        (Measures.DoughTemperature, DoughTemperatureC), (Measures.Hydration, HydrationPct), (Measures.Yeast, YeastPct),
    }.Where(one => one.Limits is not null).Select(one => (one.Setting, one.Limits!.Value));
}
