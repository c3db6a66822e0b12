namespace BakeInsights;

/// <summary>How the virtual kitchen sets its doughs. Ranges are our own choice inside what the trade calls usual.</summary>
public sealed record DoughPractice
{
    /// <summary>Heat that warms 1 kg of stainless steel by a degree, in kJ/(kg K) (physics, rounded).</summary>
    public const double SteelSpecificHeat = 0.5;

    /// <summary>Flour of a dough, in g.</summary>
    public KitchenRange FlourG { get; init; } = new(1_000, 1_500);

    /// <summary>Water in percent of flour: pan breads to country breads (usual 58 to 85, common practice).</summary>
    public KitchenRange HydrationPct { get; init; } = new(60, 76);

    /// <summary>Salt in percent of flour (usual 1.75 to 2.25, trade notes; range of common practice 1.5 to 2.5).</summary>
    public KitchenRange SaltPct { get; init; } = new(1.6, 2.4);

    /// <summary>Yeast of <see cref="YeastKind"/>, in percent of flour (straight doughs 0.3 to 1.5 dry, common practice).</summary>
    public KitchenRange YeastPct { get; init; } = new(0.6, 1.5);

    /// <summary>Sugar in percent of flour; none by default, as in a lean dough.</summary>
    public KitchenRange SugarPct { get; init; } = KitchenRange.Only(0);

    /// <summary>The kind of yeast.</summary>
    public YeastKind YeastKind { get; init; } = YeastKind.Instant;

    /// <summary>The dough temperature that is aimed at on average, in °C (trade books: 24 to 26).</summary>
    public double AimC { get; init; } = 24;

    /// <summary>Standard deviation of dough temperatures from bake to bake, in °C, as far as the water can reach.</summary>
    public double DoughTemperatureSdC { get; init; } = 1.8;

    /// <summary>
    /// The part of it that nobody aimed at: what bowl, hands and air took or gave. No more than
    /// <see cref="DoughTemperatureSdC"/> counts.
    /// </summary>
    public double MissSdC { get; init; } = 0.7;

    /// <summary>Whether ice makes water colder than the tap gives it; without, summer doughs come out warm.</summary>
    public bool UsesIce { get; init; } = true;

    /// <summary>Minutes of mixing.</summary>
    public KitchenRange MixMin { get; init; } = new(7, 9);

    /// <summary>
    /// Heat that a minute of mixing brings, in kJ/kg: 8 min warm the dough by about 1 °C. Our own choice for a small
    /// mixer; trade text's 2 °F of friction factor a minute, a third of it in the dough, has the heat of wetting in it.
    /// </summary>
    public double MixingKjPerKgMin { get; init; } = 0.25;

    /// <summary>
    /// The bowl, in g of steel at room temperature. With it a degree of water moves the dough by about 0.5, where trade
    /// experience says 0.4 (trade column, 2018) and the balance without a bowl 0.6.
    /// </summary>
    public double BowlG { get; init; } = 1_500;

    /// <summary>The part of the dough left on bowl, hands and bench (glossaries: up to 5 %).</summary>
    public double HandlingLoss { get; init; } = 0.015;

    /// <summary>Standard deviation of the dough temperature that is aimed at, in °C.</summary>
    internal double AimSdC => Math.Sqrt(Math.Max(0, (DoughTemperatureSdC * DoughTemperatureSdC) - (MissC * MissC)));

    /// <summary>Standard deviation of the dough about what was aimed at, in °C.</summary>
    internal double MissC => Math.Min(MissSdC, DoughTemperatureSdC);
}
