using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>The catalogue of measures.</summary>
public static class Measures
{
    private const string Logged = "as logged";
    private const string TradeConvention = "baker's percentage, the trade's convention (common practice)";

    /// <summary>All water in percent of all flour.</summary>
    public static Measure Hydration { get; } = OverFlour(new(
        "hydration_pct", "Hydration", Dimension.Percent,
        "100 x (water_g + water of the preferment) / (flour_g + flour of the preferment)", TradeConvention,
        bake => Masses(bake)?.HydrationPct));

    /// <summary>Salt in percent of all flour.</summary>
    public static Measure Salt { get; } = PercentOfFlour("salt_pct", "Salt", C.Salt);

    /// <summary>Sugar in percent of all flour.</summary>
    public static Measure Sugar { get; } = PercentOfFlour("sugar_pct", "Sugar", C.Sugar);

    /// <summary>Fat in percent of all flour.</summary>
    public static Measure Fat { get; } = PercentOfFlour("fat_pct", "Fat", C.Fat);

    /// <summary>Yeast in percent of all flour, as the instant yeast that does the same work.</summary>
    public static Measure Yeast { get; } = OverFlour(new(
        "yeast_instant_pct", "Yeast (as instant)", Dimension.Percent,
        "100 x yeast_g / all flour; fresh x 0.33, active dry x 0.33 / 0.40",
        TradeConvention + "; conversion as culinary-school tables print it",
        bake => bake[C.Yeast] is { } grams && bake.YeastKind is { } kind
            ? Masses(bake)?.PercentOfFlour(YeastEquivalent.Instant(grams, kind))
            : null));

    /// <summary>Flour fermented ahead, in percent of all flour.</summary>
    public static Measure PrefermentedFlour { get; } = OverFlour(new(
        "prefermented_flour_pct", "Prefermented flour", Dimension.Percent,
        "100 x flour of the preferment / all flour", TradeConvention,
        bake => Masses(bake)?.PrefermentedFlourPct));

    /// <summary>Flour and poured liquid for each 100 of flour.</summary>
    public static Measure DoughYield { get; } = OverFlour(new(
        "dough_yield", "Dough yield", Dimension.Number,
        "100 x (all flour + all water + milk_g) / all flour", "Teigausbeute (TA), net, as German trade glossaries define it",
        bake => Masses(bake)?.Yield(bake[C.Milk] ?? 0)), flourItself: 100);

    /// <summary>Millilitres of loaf for each gram of loaf.</summary>
    public static Measure SpecificVolume { get; } = new(
        "specific_volume_ml_per_g", "Specific volume", Dimension.SpecificVolume,
        "loaf_volume_ml / loaf_g", "loaf volume by seed displacement over loaf mass (AACC Approved Method 10-05.01, from memory)",
        bake => bake[C.LoafVolume] is { } volume && bake[C.Loaf] is { } mass ? Loaves.SpecificVolume(volume, mass) : null);

    /// <summary>The part of the dough that the oven took.</summary>
    public static Measure BakeLoss { get; } = new(
        "bake_loss_pct", "Bake loss", Dimension.Percent,
        "100 x (1 - loaf_count x loaf_g / dough_g)", "bake-out loss, trade dictionary",
        bake => bake[C.Dough] is { } dough && bake[C.LoafCount] is { } count && bake[C.Loaf] is { } loaf
            ? Loaves.BakeLossPct(dough, count * loaf)
            : null);

    /// <summary>The dough when mixing ends.</summary>
    public static Measure DoughTemperature { get; } = AsLogged(C.DoughTemp, "Dough temperature");

    /// <summary>The room.</summary>
    public static Measure RoomTemperature { get; } = AsLogged(C.RoomTemp, "Room temperature");

    /// <summary>The water.</summary>
    public static Measure WaterTemperature { get; } = AsLogged(C.WaterTemp, "Water temperature");

    /// <summary>First rise.</summary>
    public static Measure RiseTime { get; } = AsLogged(C.Rise, "Rise time");

    /// <summary>Proof.</summary>
    public static Measure ProofTime { get; } = AsLogged(C.Proof, "Proof time");

    /// <summary>Crumb.</summary>
    public static Measure CrumbScore { get; } = AsLogged(C.CrumbScore, "Crumb score");

    /// <summary>The catalogue, in the order of a table.</summary>
    public static IReadOnlyList<Measure> All { get; } =
    [
        Hydration, Salt, Sugar, Fat, Yeast, PrefermentedFlour, DoughYield,
        RoomTemperature, WaterTemperature, DoughTemperature, RiseTime, ProofTime,
        SpecificVolume, BakeLoss, CrumbScore,
    ];

    private static Measure AsLogged(QuantityColumn column, string title) =>
        new(column.Name, title, column.Dimension, column.Name, Logged, bake => bake[column]);

    private static Measure PercentOfFlour(string name, string title, QuantityColumn column) => OverFlour(new(
        name, title, Dimension.Percent, $"100 x {column.Name} / all flour", TradeConvention,
        bake => bake[column] is { } grams ? Masses(bake)?.PercentOfFlour(grams) : null));

    // What stands over all flour falls as 1 / flour; only the flour weighed in is uncertain, not that of a preferment.
    private static Measure OverFlour(Measure measure, double flourItself = 0) => measure.MovedByFlour(bake =>
        (measure.Of(bake) - flourItself) * -bake[C.Flour] / Masses(bake)?.FlourG);

    // A preferment whose hydration is not logged leaves flour and water unknown, so all that rests on them is too.
    internal static DoughMasses? Masses(Bake bake)
    {
        if (bake[C.Flour] is not { } flour || bake[C.Water] is not { } water)
        {
            return null;
        }

        var preferment = bake[C.Preferment] ?? 0;
        return preferment == 0 ? new(flour, water, 0, 0)
            : bake[C.PrefermentHydration] is { } hydration ? new(flour, water, preferment, hydration)
            : null;
    }
}
