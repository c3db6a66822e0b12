namespace BakeInsights;

/// <summary>What one bake of a day is to be: a bench of a class, say. What isn't given is as the formula has it.</summary>
public sealed record SheetBake
{
    /// <summary>The bench's or the bake's name; empty for a bake that needs none.</summary>
    public string Name { get; init; } = "";

    /// <summary>The dough wanted at the end of mixing; null for the journal's typical one.</summary>
    public Temperature? Dough { get; init; }

    /// <summary>Water in percent of all flour.</summary>
    public double? HydrationPct { get; init; }

    /// <summary>Yeast in percent of all flour, as the instant yeast that does the same work.</summary>
    public double? YeastPct { get; init; }

    /// <summary>Salt in percent of all flour.</summary>
    public double? SaltPct { get; init; }

    /// <summary>Sugar in percent of all flour.</summary>
    public double? SugarPct { get; init; }

    /// <summary>The bake that has these settings, as a plan or a fit gives them.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="settings">The settings; those that aren't known are left to the formula.</param>
    public static SheetBake Of(string name, DoughSettings settings)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(settings);
        return new()
        {
            Name = name,
            Dough = settings[Measures.DoughTemperature] is { } celsius ? Temperature.FromC(celsius) : null,
            HydrationPct = settings[Measures.Hydration],
            YeastPct = settings[Measures.Yeast],
            SaltPct = settings[Measures.Salt],
            SugarPct = settings[Measures.Sugar],
        };
    }
}
