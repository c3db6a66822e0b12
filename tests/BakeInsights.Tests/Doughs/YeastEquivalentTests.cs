using Xunit;

namespace BakeInsights.Tests;

public class YeastEquivalentTests
{
    // "Yeast conversions: fresh to dry" (US culinary-school text): fresh x 0.40 = active dry, fresh x 0.33 = instant.
    [Theory]
    [InlineData(10, YeastKind.Fresh, 3.3)]
    [InlineData(4.0, YeastKind.ActiveDry, 3.3)]
    [InlineData(3.3, YeastKind.Instant, 3.3)]
    public void Ten_grams_of_fresh_four_of_active_dry_and_3_3_of_instant_do_the_same_work(
        double grams, YeastKind kind, double instant) =>
        Assert.Equal(instant, YeastEquivalent.Instant(grams, kind), 1e-9);

    // "Yeast" (US professional-baking text) prints fresh x 0.35: 40 g fresh = 14 g instant. The factor used here
    // differs from it by 6 %, which is how far the sources disagree.
    [Fact]
    public void Other_published_factor_is_within_6_percent() =>
        Assert.Equal(14, YeastEquivalent.Instant(40, YeastKind.Fresh), 0.06 * 14);

    // Equal dry matter: fresh yeast 69.00 % water, active dry 5.08 % (USDA Standard Reference, records 18374, 18375).
    [Fact]
    public void Instant_for_fresh_is_the_ratio_of_dry_matter() =>
        Assert.Equal((100 - 69.00) / (100 - 5.08), YeastEquivalent.InstantForFresh, 0.005);

    [Fact]
    public void Unknown_kind_is_a_programming_error() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => YeastEquivalent.Instant(1, (YeastKind)99));
}
