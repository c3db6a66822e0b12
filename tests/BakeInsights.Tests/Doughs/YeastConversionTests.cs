using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class YeastConversionTests
{
    private static readonly Gen<YeastKind> AnyKind =
        Gen.Enum<YeastKind>();

    [Fact]
    public void Converting_there_and_back_gives_the_same_mass() =>
        Gen.Select(Gen.Double[0.1, 100], AnyKind, AnyKind).Sample((grams, from, to) =>
            Math.Abs(YeastEquivalent.Convert(YeastEquivalent.Convert(grams, from, to), to, from) - grams) < 1e-9
            && YeastConversion.All.All(source =>
                source.Convert(grams, from, to) is not { } there || Math.Abs(source.Convert(there, to, from)!.Value - grams) < 1e-9));

    [Fact]
    public void The_first_source_is_the_one_that_measures_use() =>
        Gen.Select(Gen.Double[0.1, 100], AnyKind, AnyKind).Sample((grams, from, to) =>
            Math.Abs(YeastConversion.All[0].Convert(grams, from, to)!.Value - YeastEquivalent.Convert(grams, from, to)) < 1e-9);

    // (100 - 69.00) / (100 - 5.08) = 0.327, by hand from USDA 18374 and 18375.
    [Fact]
    public void Equal_dry_matter_gives_a_third() =>
        Assert.Equal(0.327, YeastConversion.All[^1].InstantForFresh!.Value, 0.0005);

    // 0.6 to 0.67 g of water for each gram of fresh yeast replaced: 1 - 0.40 and 1 - 0.33.
    [Theory]
    [InlineData(YeastKind.ActiveDry, 6.0)]
    [InlineData(YeastKind.Instant, 6.7)]
    public void Dry_yeast_in_place_of_fresh_asks_for_the_water_that_is_gone(YeastKind to, double waterG) =>
        Assert.Equal(waterG, YeastEquivalent.WaterToAdd(10, YeastKind.Fresh, to), 1e-9);
}
