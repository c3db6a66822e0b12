namespace BakeInsights;

/// <summary>The water a kitchen has.</summary>
public sealed record KitchenWater
{
    /// <summary>
    /// The warmest water that yeast should meet (45 °C, 113 °F; common practice, no source). The US Army's formula
    /// cards wake dry yeast at 105 to 110 °F.
    /// </summary>
    public static Temperature WarmestForYeast { get; } = Temperature.FromC(45);

    /// <summary>The taps and the ice box.</summary>
    /// <param name="cold">The cold tap, not below freezing.</param>
    /// <param name="hot">The hot tap, not below the cold one.</param>
    /// <param name="iceG">Ice at hand, in grams.</param>
    public KitchenWater(Temperature cold, Temperature hot, double iceG = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cold, Temperature.FromC(0));
        ArgumentOutOfRangeException.ThrowIfLessThan(hot, cold);
        ArgumentOutOfRangeException.ThrowIfNegative(iceG);
        Cold = cold;
        Hot = hot;
        IceG = iceG;
    }

    /// <summary>The cold tap.</summary>
    public Temperature Cold { get; }

    /// <summary>The hot tap.</summary>
    public Temperature Hot { get; }

    /// <summary>Ice at hand, in grams.</summary>
    public double IceG { get; }

    /// <summary>How to draw this water, as near to what is needed as the kitchen comes.</summary>
    /// <param name="needed">What <see cref="TemperatureRule"/> or <see cref="HeatBalance"/> asks for.</param>
    /// <param name="waterG">Water of the formula, in grams, more than nothing.</param>
    public WaterPlan Draw(Temperature needed, double waterG)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waterG);
        return needed < Cold ? WithIce(needed, waterG) : FromTaps(needed, waterG);
    }

    private WaterPlan FromTaps(Temperature needed, double waterG)
    {
        var reached = needed > Hot ? Hot : needed;
        var hotG = Hot == Cold ? 0 : waterG * (reached - Cold).C / (Hot - Cold).C;
        return new(needed, reached, waterG - hotG, hotG, 0);
    }

    private WaterPlan WithIce(Temperature needed, double waterG)
    {
        // Cooling goes with the ice, so a part of the ice does that part of the cooling.
        var asked = Ice.Replacing(waterG, Cold, needed);
        var iceG = Math.Min(asked, Math.Min(IceG, waterG));
        var reached = iceG == asked ? needed : Cold - (iceG / asked * (Cold - needed));
        return new(needed, reached, waterG - iceG, 0, iceG);
    }
}
