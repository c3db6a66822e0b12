using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>What one source says that a kind of yeast weighs in place of another. Sources disagree.</summary>
/// <param name="Source">Where the factors were published.</param>
/// <param name="ActiveDryForFresh">Grams of active dry yeast for one of fresh; null where the source does not say.</param>
/// <param name="InstantForFresh">Grams of instant yeast for one of fresh; null where the source does not say.</param>
/// <param name="InstantForActiveDry">Grams of instant yeast for one of active dry; null where the source does not say.</param>
public sealed record YeastConversion(
    string Source, double? ActiveDryForFresh, double? InstantForFresh, double? InstantForActiveDry)
{
    /// <summary>The sources, the one that <see cref="YeastEquivalent"/> uses first.</summary>
    public static ImmutableArray<YeastConversion> All { get; } =
    [
        Table(
            "culinary-school table, fresh to dry (used here)",
            YeastEquivalent.ActiveDryForFresh,
            YeastEquivalent.InstantForFresh),
        Table("professional-baking text", 0.50, 0.35),
        new("old home rule, 1/4 oz dry for 2/3 oz compressed", 3.0 / 8, null, null),
        new("common practice, no source", null, null, 0.75),
        new(
            "equal dry matter (USDA Standard Reference 18374 and 18375), all cells alive",
            null,
            DryMatter(YeastKind.Fresh) / DryMatter(YeastKind.Instant),
            null),
    ];

    /// <summary>The mass of one kind, in grams, that stands for a mass of another; null where the source does not say.</summary>
    public double? Convert(double grams, YeastKind from, YeastKind to)
    {
        var factor = (from, to) switch
        {
            (YeastKind.Fresh, YeastKind.ActiveDry) => ActiveDryForFresh,
            (YeastKind.Fresh, YeastKind.Instant) => InstantForFresh,
            (YeastKind.ActiveDry, YeastKind.Instant) => InstantForActiveDry,
            (YeastKind.ActiveDry, YeastKind.Fresh) => 1 / ActiveDryForFresh,
            (YeastKind.Instant, YeastKind.Fresh) => 1 / InstantForFresh,
            (YeastKind.Instant, YeastKind.ActiveDry) => 1 / InstantForActiveDry,
            _ => 1,
        };
        return grams * factor;
    }

    private static YeastConversion Table(string source, double activeDry, double instant) =>
        new(source, activeDry, instant, instant / activeDry);

    private static double DryMatter(YeastKind kind) => 100 - WaterContents.Yeast(kind).Pct;
}
