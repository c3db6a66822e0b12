using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>One cause of the dough's temperature, with the band in which physics and trade expect its part.</summary>
/// <param name="Name">A short fixed name, for programs.</param>
/// <param name="Title">The name for people.</param>
/// <param name="Column">Where the journal has it; null for what is always there.</param>
/// <param name="Centre">The value that the model counts from.</param>
/// <param name="Low">The lower end of the band: the mean less one standard deviation.</param>
/// <param name="High">The upper end of the band: the mean plus one standard deviation.</param>
/// <param name="Source">Where the band comes from.</param>
internal sealed record DoughCause(
    string Name, string Title, QuantityColumn? Column, double Centre, double Low, double High, string Source)
{
    /// <summary>The mixing time that the model counts from, in minutes: that of the trade text's example of friction.</summary>
    public const double CentreMixMin = 8;

    /// <summary>How many temperatures the trade's rule of three averages: a friction factor warms the dough by a third of it.</summary>
    private const double RuleOfThree = 3;

    /// <summary>The largest friction factor of the sources: 35 °F, pizza trade and high-speed mixers (A Treatise on Baking).</summary>
    private static readonly TemperatureDifference MostFriction = TemperatureDifference.FromF(35);

    /// <summary>What warms a dough of which all is at the centre's temperature: the heat of hydration, and the mixer.</summary>
    public static DoughCause Warming { get; } = new(
        "warming", "Warming by mixing", null, 0, FrictionFactors.Hand.C / RuleOfThree, MostFriction.C / RuleOfThree,
        "a third of the trade's friction factors, 5 °F by hand to 35 °F; the heat of hydration is in them");

    public static DoughCause Water { get; } = new(
        "water", "Water temperature", BakeColumns.WaterTemp, Cause.CentreTemperatureC, 0.35, 0.6,
        "share of the dough's heat, 0.59 to 0.65, less what bowl and air take; trade column of 2018: 0.4");

    public static DoughCause Flour { get; } = new(
        "flour", "Flour temperature", BakeColumns.FlourTemp, Cause.CentreTemperatureC, 0.2, 0.4,
        "share of the dough's heat, 0.35 to 0.41, less what bowl and air take");

    public static DoughCause Room { get; } = new(
        "room", "Room temperature", BakeColumns.RoomTemp, Cause.CentreTemperatureC, 0.05, 0.3,
        "what bowl and air take; common practice, no source");

    // By hand a minute brings next to nothing; 35 °F in eight or nine minutes are twice the trade's figure.
    public static DoughCause Mixing { get; } = new(
        "mixing", "Mixing time", BakeColumns.Mix, CentreMixMin, 0, 2 * FrictionFactors.OfMixing(1).C / RuleOfThree,
        "nothing to twice the trade's 2 °F of friction a minute, a third of it");

    /// <summary>All, in the order of the model's columns.</summary>
    public static IReadOnlyList<DoughCause> All { get; } = [Warming, Water, Flour, Room, Mixing];

    private static readonly Dictionary<DoughCause, int> Places = All.Index().ToDictionary(cause => cause.Item, cause => cause.Index);

    /// <summary>How much the measured doughs of one kitchen scatter about the model, in °C: common practice, no source.</summary>
    public static SpreadPrior Scatter { get; } = new(0.7, 2);

    /// <summary>Its place among <see cref="All"/>, which is that of its column in the model.</summary>
    public int Place => Places[this];

    /// <summary>The band as a normal distribution.</summary>
    public NormalPrior Prior => new(Name, (Low + High) / 2, (High - Low) / 2);
}
