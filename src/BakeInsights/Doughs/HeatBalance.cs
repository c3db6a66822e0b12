using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>The heat balance of mixing: what goes in warm or cold, the heat of wetting the flour, the mixer's work.</summary>
/// <remarks>
/// dough = (sum of mass x specific heat x temperature + heats) / sum of mass x specific heat. Heat lost to bowl and
/// air is not in it; give it as mixing heat, less than zero, where it is known. For temperatures above freezing:
/// melting ice is <see cref="Ice"/>'s part.
/// </remarks>
public sealed record HeatBalance
{
    /// <summary>
    /// Heat of hydration, in kJ for each kg of flour: 6.5 BTU/lb at 11 to 12 % moisture (trade dictionary, "heat of
    /// hydration"). A textbook takes 15 kJ/kg of dough instead; the trade's figure speaks for flour.
    /// </summary>
    public const double TradeHydrationKjPerKgFlour = 15.1;

    /// <summary>A dough of flour and water.</summary>
    /// <param name="flourG">Flour, in grams, more than nothing.</param>
    /// <param name="flour">The flour's temperature.</param>
    /// <param name="waterG">Water, in grams, more than nothing.</param>
    public HeatBalance(double flourG, Temperature flour, double waterG)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(flourG);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waterG);
        FlourG = flourG;
        Flour = flour;
        WaterG = waterG;
    }

    /// <summary>Flour, in grams.</summary>
    public double FlourG { get; }

    /// <summary>The flour's temperature.</summary>
    public Temperature Flour { get; }

    /// <summary>Water, in grams.</summary>
    public double WaterG { get; }

    /// <summary>Whatever else goes in: milk, a preferment.</summary>
    public ImmutableArray<HeatPart> Others { get; init; } = [];

    /// <summary>Heat set free as flour takes up water, in kJ for each kg of <see cref="FlourG"/>.</summary>
    public double HydrationKjPerKgFlour { get; init; } = TradeHydrationKjPerKgFlour;

    /// <summary>Heat that mixing brings, less what bowl and air take, in kJ for each kg of dough.</summary>
    public double MixingKjPerKgDough { get; init; }

    /// <summary>The water's part of the dough's heat capacity, 0 to 1: how far the dough follows a degree of water.</summary>
    public double WaterShare => WaterG * SpecificHeats.Water / Capacity;

    /// <summary>How much the heat of hydration alone warms the dough: about 3.4 °C at 65 % hydration.</summary>
    public TemperatureDifference HydrationWarming => TemperatureDifference.FromC(FlourG * HydrationKjPerKgFlour / Capacity);

    /// <summary>How much the mixer warms the dough.</summary>
    public TemperatureDifference MixingWarming => TemperatureDifference.FromC(
        (FlourG + WaterG + Others.Sum(part => part.Grams)) * MixingKjPerKgDough / Capacity);

    private double Capacity => (FlourG * SpecificHeats.Flour) + (WaterG * SpecificHeats.Water) + Others.Sum(part => part.Capacity);

    /// <summary>The dough's temperature with water at this temperature.</summary>
    public Temperature Dough(Temperature water)
    {
        var fromWater = (FlourG * SpecificHeats.Flour * (Flour - water).C) + Others.Sum(part => part.Capacity * (part.At - water).C);
        return water + TemperatureDifference.FromC(fromWater / Capacity) + HydrationWarming + MixingWarming;
    }

    /// <summary>The water's temperature for this dough.</summary>
    public Temperature Water(Temperature dough) => dough + ((dough - Dough(dough)) / WaterShare);
}
