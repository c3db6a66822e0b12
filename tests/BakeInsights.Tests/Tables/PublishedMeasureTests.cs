using Xunit;

namespace BakeInsights.Tests;

/// <summary>Published worked examples, written down as rows of a journal and measured from there.</summary>
public class PublishedMeasureTests
{
    // "Baker's percentage, part 4" (trade page): final dough of 900 g flour, 468 g water, 27 g salt, 9 g instant yeast
    // and 936 g poolish (468 flour, 468 water, 0.3 yeast); percentages worked out from its table. The yeast column
    // takes the poolish's yeast with it. Seen without the poolish, the dough would have 52 % water and 3 % salt.
    [Fact]
    public void Poolish_dough()
    {
        var bake = Csv.Bake(
            "baked_on,flour_g,water_g,salt_g,yeast_g,yeast_kind,preferment_g,preferment_hydration_pct",
            "2026-10-01,900,468,27,9.3,instant,936,100");

        Is(68.421, Measures.Hydration, bake, 5e-4);
        Is(1.974, Measures.Salt, bake, 5e-4);
        Is(0.680, Measures.Yeast, bake, 5e-4);
        Is(34.211, Measures.PrefermentedFlour, bake, 5e-4);
    }

    // "Understanding Bakers %" (trade page), in pounds: overall 59.44 lb flour, 38.64 lb water = 65.0 %, 1.19 lb salt =
    // 2.0 %, of which 38.66 lb poolish of equal parts. Printed to one decimal.
    [Fact]
    public void Second_poolish_dough_in_pounds()
    {
        var bake = Csv.Bake(
            "baked_on,flour_lb,water_lb,salt_lb,preferment_lb,preferment_hydration_pct",
            "2026-10-01,40.12,19.31,1.19,38.66,100");

        Is(65.0, Measures.Hydration, bake, 0.05);
        Is(2.0, Measures.Salt, bake, 0.05);
    }

    // "Dough yield" and "Teigausbeute (TA)" (German trade glossaries): milk counts in full, egg and butter not at all.
    [Theory]
    [InlineData("155,110,", 170.97)]
    [InlineData("525,190,120", 159.05)]
    public void Dough_yield(string cells, double expected) =>
        Is(expected, Measures.DoughYield, Csv.Bake("baked_on,flour_g,water_g,milk_g", $"2026-10-01,{cells}"), 0.005);

    // A rich dough worked by hand on the same rule (500 g flour, 50 g water, 200 g milk): 10 % as the formula states its
    // water, a dough yield of 150 with the milk.
    [Fact]
    public void Rich_dough_has_little_water_and_much_liquid()
    {
        var bake = Csv.Bake(
            "baked_on,flour_g,water_g,milk_g,egg_g,fat_g,honey_g", "2026-10-01,500,50,200,100,75,30");

        Is(10, Measures.Hydration, bake, 1e-9);
        Is(150, Measures.DoughYield, bake, 1e-9);
        Is(15, Measures.Fat, bake, 1e-9);
    }

    // USDA Standard Reference 28 (2015): 125 g a cup of all-purpose flour, so 4 1/3 cups are 541.67 g; 237 g a cup of
    // water, so 1 1/2 cups are 355.5 g.
    [Fact]
    public void Dough_by_the_cup()
    {
        var bake = Csv.Bake("baked_on,flour_cups,water_cups", "2026-10-01,4.333333,1.5");

        Assert.Equal(541.67, bake[BakeColumns.Flour]!.Value, 0.005);
        Is(65.63, Measures.Hydration, bake, 0.005);
    }

    // "Yeast conversions: fresh to dry" (US culinary-school text): 10 g fresh, 4 g active dry and 3.3 g instant.
    [Theory]
    [InlineData("10,fresh")]
    [InlineData("4,active_dry")]
    [InlineData("3.3,instant")]
    public void Yeast_of_each_kind_in_percent_as_instant(string cells) =>
        Is(0.66, Measures.Yeast, Csv.Bake("baked_on,flour_g,water_g,yeast_g,yeast_kind", $"2026-10-01,500,325,{cells}"), 1e-9);

    // "Lab report 5" (student laboratory): volume and mass of four breads, printed to three decimals.
    [Theory]
    [InlineData("1900,405.71", 4.683)]
    [InlineData("1810,245.25", 7.380)]
    [InlineData("300,47.79", 6.277)]
    [InlineData("140,51.94", 2.695)]
    public void Specific_volume(string cells, double expected) =>
        Is(expected, Measures.SpecificVolume, Csv.Bake("baked_on,loaf_volume_ml,loaf_g", $"2026-10-01,{cells}"), 5e-4);

    // The same loaf of 405.71 g and 1900 mL in US units, by the ounce and the cubic inch of NIST Handbook 44.
    [Fact]
    public void Specific_volume_of_a_loaf_in_ounces_and_cubic_inches() => Is(
        4.683, Measures.SpecificVolume, Csv.Bake("baked_on,loaf_volume_cuin,loaf_oz", "2026-10-01,115.945,14.3110"), 5e-4);

    // Worked by hand from the definition (bake-out loss, trade dictionary): 500 g of dough, 445 g of loaf.
    [Theory]
    [InlineData("500,1,445", 11.0)]
    [InlineData("1000,2,445", 11.0)]
    [InlineData("1000,4,222.5", 11.0)]
    public void Bake_loss(string cells, double expected)
    {
        var bake = Csv.Bake("baked_on,dough_g,loaf_count,loaf_g,loaf_volume_ml", $"2026-10-01,{cells},1900");

        Is(expected, Measures.BakeLoss, bake, 1e-9);
    }

    private static void Is(double expected, Measure measure, Bake bake, double tolerance) =>
        Assert.Equal(expected, measure.Of(bake)!.Value, tolerance);
}
