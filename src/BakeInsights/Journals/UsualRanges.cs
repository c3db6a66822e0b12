using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>What is usual and what is possible, beyond the ranges that the columns themselves can mean.</summary>
/// <remarks>
/// Common practice of the trade, no source, except where a remark says otherwise. How much flour a kitchen takes has no
/// usual range: a bench of 20 kg is as usual in its place as 500 g.
/// </remarks>
public static class UsualRanges
{
    /// <summary>From this many °C on, water is hotter than yeast stands well (common practice; army bakeries poured it at up to 110 °F, 43 °C).</summary>
    public const double HotWaterC = 45;

    /// <summary>A dough temperature further than this from the heat balance is doubted, in °C (common practice).</summary>
    public const double FurthestFromBalanceC = 8;

    /// <summary>Looks at a rising dough are far apart when the gap is more than this share of the time (common practice).</summary>
    public const double WidestGap = 0.3;

    /// <summary>The longest usual rise that is not in the cold, in minutes.</summary>
    public const double LongestWarmRiseMin = 480;

    private const string OfFlour = "% of flour";

    /// <summary>Water in percent of flour: a batter above, crumbs below.</summary>
    public static RatioRange Hydration { get; } = new("hydration", OfFlour, C.Water, C.Flour, 30, 50, 90, 150);

    /// <summary>Salt in percent of flour; more than 6 is a slip.</summary>
    public static RatioRange Salt { get; } = new("salt", OfFlour, C.Salt, C.Flour, 0, 1, 2.5, 6);

    /// <summary>Sugar in percent of flour.</summary>
    public static RatioRange Sugar { get; } = new("sugar", OfFlour, C.Sugar, C.Flour, 0, 0, 25, 60);

    /// <summary>Fat in percent of flour: brioche has half as much as flour.</summary>
    public static RatioRange Fat { get; } = new("fat", OfFlour, C.Fat, C.Flour, 0, 0, 50, 100);

    /// <summary>Yeast in percent of flour, by kind as the words of <c>yeast_kind</c> stand: fresh, active dry, instant.</summary>
    public static IReadOnlyList<RatioRange> Yeast { get; } =
    [
        new("fresh yeast", OfFlour, C.Yeast, C.Flour, 0, 0.2, 4, 12),
        new("active dry yeast", OfFlour, C.Yeast, C.Flour, 0, 0.1, 2, 6),
        new("instant yeast", OfFlour, C.Yeast, C.Flour, 0, 0.05, 1.5, 5),
    ];

    /// <summary>Prefermented flour in percent of all flour.</summary>
    public static RatioRange PrefermentedFlour { get; } = new("prefermented flour", "% of all flour", C.Preferment, C.Flour, 0, 5, 50, 100);

    /// <summary>
    /// Millilitres of loaf for each gram: 0.9 is denser than dough before it rises; 2.7 to 7.4 were measured in one
    /// class ("Lab report 5").
    /// </summary>
    public static RatioRange SpecificVolume { get; } = new("specific volume", "mL/g", C.LoafVolume, C.Loaf, 0.9, 1.5, 7.5, 12);

    /// <summary>Bake loss in percent of the dough; thin crusty loaves lose up to 25.</summary>
    public static RatioRange BakeLoss { get; } = new("bake loss", "% of the dough", C.Dough, C.Loaf, 0, 8, 25, 40);

    /// <summary>The first rise, in the cold or not.</summary>
    public static UsualRange OfRise { get; } = new(C.Rise, 30, 4_320);

    /// <summary>The usual ranges of columns by themselves. Hot water and long rises have their own notices.</summary>
    public static IReadOnlyList<UsualRange> OfColumns { get; } =
    [
        new(C.PrefermentHydration, 50, 125),
        new(C.RoomTemp, 15, 32),
        new(C.FlourTemp, 5, 30),
        new(C.WaterTemp, 1, HotWaterC),

        // Trade books aim at 24 to 28 °C; hand mixing in a cool kitchen ends a few degrees lower.
        new(C.DoughTemp, 18, 30),
        OfRise,
        new(C.Proof, 20, 240),
        new(C.OvenTemp, 175, 260),
        new(C.CoreTemp, 85, 99),
        new(C.Baking, 12, 75),
    ];

    /// <summary>The numbers worked out from two columns.</summary>
    public static IReadOnlyList<RatioRange> OfRatios { get; } =
        [Hydration, Salt, Sugar, Fat, .. Yeast, PrefermentedFlour, SpecificVolume, BakeLoss];

    /// <summary>The usual range of a column, or null when it has none.</summary>
    public static UsualRange? Of(QuantityColumn column) => OfColumns.FirstOrDefault(range => range.Column == column);
}
