namespace BakeInsights;

/// <summary>The kitchen that a sheet is for.</summary>
public sealed record SheetKitchen
{
    /// <summary>The usual cold tap, in °C (common practice, no source): a sheet that matters is printed with one's own.</summary>
    public const double UsualColdC = 15;

    /// <summary>The usual hot tap, in °C (common practice, no source).</summary>
    public const double UsualHotC = 50;

    /// <summary>The room; null for the median of the journal's bakes.</summary>
    public Temperature? Room { get; init; }

    /// <summary>The flour; null for a flour as warm as the room.</summary>
    public Temperature? Flour { get; init; }

    /// <summary>The cold tap, not below freezing.</summary>
    public Temperature Cold { get; init; } = Temperature.FromC(UsualColdC);

    /// <summary>The hot tap, not below the cold one.</summary>
    public Temperature Hot { get; init; } = Temperature.FromC(UsualHotC);

    /// <summary>Ice at hand, in grams, not negative; null for as much as is asked for.</summary>
    public double? IceG { get; init; }

    /// <summary>The kitchen's water for a dough with this much of it; no dough takes more ice than it has water.</summary>
    internal KitchenWater WaterFor(double waterG) => new(Cold, Hot, IceG ?? waterG);
}
