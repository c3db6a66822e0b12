namespace BakeInsights;

/// <summary>How much ice brings water to a temperature.</summary>
public static class Ice
{
    /// <summary>Heat that melts ice, as the °C by which it would warm its own mass of water: 144 BTU/lb, 80 cal/g.</summary>
    /// <remarks>From the trade's text formula, tap + 112 in °F; 112 is 144 - 32. Physics has 334 / 4.18 = 79.9.</remarks>
    public static TemperatureDifference TradeMelting { get; } = TemperatureDifference.FromF(144);

    /// <summary>Heat that melts ice, in kJ/kg (334; physics).</summary>
    public const double MeltingKjPerKg = 334;

    /// <summary>Specific heat of ice, in kJ/(kg K) (2.108; physics).</summary>
    public const double SpecificHeat = 2.108;

    private static readonly Temperature Freezing = Temperature.FromC(0);

    /// <summary>
    /// Ice at 0 °C, in grams, that takes the place of as much of the water: ice = water x (tap - needed) /
    /// (tap + 112) in °F, the trade's formula, which is the heat balance of melting ice. A need below freezing is
    /// legitimate: the ice then goes on melting in the dough. No ice where the tap is cold enough.
    /// </summary>
    /// <param name="waterG">Water of the formula, ice included, in grams.</param>
    /// <param name="tap">The tap's water, not below freezing.</param>
    /// <param name="needed">The water the rule asks for.</param>
    public static double Replacing(double waterG, Temperature tap, Temperature needed)
    {
        Check(waterG, tap);
        return needed >= tap ? 0 : waterG * (tap - needed).C / ((tap - Freezing) + TradeMelting).C;
    }

    /// <summary>
    /// Ice, in grams, that is put on top of all the water, which makes the dough wetter by as much: water x 4.18 x
    /// (tap - needed) / (334 + 2.108 x degrees of the ice below freezing + 4.18 x needed in °C). Not the same mass as
    /// when it replaces water.
    /// </summary>
    /// <param name="waterG">Water it is put on, in grams.</param>
    /// <param name="tap">The water, not below freezing.</param>
    /// <param name="needed">The temperature wanted once all ice has melted, not below freezing.</param>
    /// <param name="ice">The ice, not above freezing.</param>
    public static double OnTop(double waterG, Temperature tap, Temperature needed, Temperature ice)
    {
        Check(waterG, tap);
        ArgumentOutOfRangeException.ThrowIfLessThan(needed, Freezing);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(ice, Freezing);
        if (needed >= tap)
        {
            return 0;
        }

        var taken = MeltingKjPerKg + (SpecificHeat * (Freezing - ice).C) + (SpecificHeats.Water * (needed - Freezing).C);
        return waterG * SpecificHeats.Water * (tap - needed).C / taken;
    }

    private static void Check(double waterG, Temperature tap)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(waterG);
        ArgumentOutOfRangeException.ThrowIfLessThan(tap, Freezing);
    }
}
