namespace BakeInsights;

/// <summary>What a baker wishes of the house formula.</summary>
/// <param name="Goals">The results wished for, at least one, each result once.</param>
public sealed record TuneWish(IReadOnlyList<TuneGoal> Goals)
{
    /// <summary>Bounds on what may be set: a hydration that a class can handle, say.</summary>
    public IReadOnlyList<SettingLimit> Limits { get; init; } = [];

    /// <summary>The house formula; null for the journal's typical dough, the median of each setting.</summary>
    public DoughSettings? House { get; init; }

    /// <summary>Temperatures and water on the day; null for those that the journal knows, as far as it does.</summary>
    public TuneKitchen? Kitchen { get; init; }
}

/// <summary>Bounds of one setting, in its canonical unit.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Low">The least.</param>
/// <param name="High">The most, not below the least.</param>
public sealed record SettingLimit(Measure Setting, double Low, double High);

/// <summary>Under what conditions a dough is mixed, and with what water.</summary>
/// <param name="Conditions">Flour, room and mixing time.</param>
/// <param name="Water">The taps and the ice.</param>
public sealed record TuneKitchen(MixingConditions Conditions, KitchenWater Water);
