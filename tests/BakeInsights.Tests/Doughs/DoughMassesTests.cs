using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class DoughMassesTests
{
    // "Baker's percentage, part 4" (trade page): 900 g flour, 468 g water, 936 g poolish of equal flour and water;
    // 27 g salt and 9.3 g yeast with the poolish's own. Percentages worked out from its table.
    private static readonly DoughMasses Poolish = new(900, 468, 936, 100);

    [Fact]
    public void Poolish_flour_and_water_count_in_the_totals()
    {
        Assert.Equal(1368, Poolish.FlourG, 1e-9);
        Assert.Equal(936, Poolish.WaterG, 1e-9);
        Assert.Equal(68.421, Poolish.HydrationPct, 5e-4);
        Assert.Equal(34.211, Poolish.PrefermentedFlourPct, 5e-4);
    }

    [Fact]
    public void Poolish_dough_has_salt_and_yeast_in_percent_of_all_flour()
    {
        Assert.Equal(1.974, Poolish.PercentOfFlour(27), 5e-4);
        Assert.Equal(0.680, Poolish.PercentOfFlour(9.3), 5e-4);
    }

    // "Understanding Bakers %" (trade page), overall formula of a dough with a poolish: 59.44 lb flour, 38.64 lb
    // water = 65.0 %, 1.19 lb salt = 2.0 %. Printed to one decimal. The unit does not matter.
    [Fact]
    public void Second_poolish_table_gives_its_printed_percentages()
    {
        var dough = new DoughMasses(40.12, 38.64 - 19.33, 38.66, 100);

        Assert.Equal(59.44, dough.FlourG, 0.011);
        Assert.Equal(65.0, dough.HydrationPct, 0.05);
        Assert.Equal(2.0, dough.PercentOfFlour(1.19), 0.05);
    }

    // "Dough yield" and "Teigausbeute (TA)" (German trade glossaries): 155 g flour and 110 g water give 171; the whole
    // dough of 525 g flour, 190 g water and 120 g milk gives 159. Both printed without decimals.
    [Theory]
    [InlineData(155, 110, 0, 170.97, 171)]
    [InlineData(525, 190, 120, 159.05, 159)]
    public void Dough_yield_is_as_the_glossary_works_it_out(double flour, double water, double milk, double yield, double printed)
    {
        var worked = new DoughMasses(flour, water, 0, 0).Yield(milk);

        Assert.Equal(yield, worked, 0.005);
        Assert.Equal(printed, Math.Round(worked));
    }

    // Common practice, no source: a levain of 100 % hydration is half flour, half water.
    [Theory]
    [InlineData(100, 50)]
    [InlineData(50, 66.6667)]
    [InlineData(200, 33.3333)]
    [InlineData(0, 100)]
    public void Preferment_splits_by_its_hydration(double hydration, double flour) =>
        Assert.Equal(flour, new DoughMasses(0, 0, 100, hydration).PrefermentedFlourG, 1e-4);

    [Fact]
    public void Percentages_do_not_change_when_a_dough_is_scaled() =>
        Gen.Select(Gen.Double[10, 5000], Gen.Double[0, 5000], Gen.Double[0, 3000], Gen.Double[40, 200], Gen.Double[0.01, 100])
            .Sample((flour, water, preferment, hydration, scale) =>
            {
                var one = new DoughMasses(flour, water, preferment, hydration);
                var scaled = new DoughMasses(scale * flour, scale * water, scale * preferment, hydration);
                return Near(one.HydrationPct, scaled.HydrationPct)
                    && Near(one.PrefermentedFlourPct, scaled.PrefermentedFlourPct)
                    && Near(one.PercentOfFlour(flour / 50), scaled.PercentOfFlour(scale * flour / 50))
                    && Near(one.Yield(water / 2), scaled.Yield(scale * water / 2));
            });

    [Fact]
    public void Flour_and_water_of_the_dough_are_all_that_went_in() =>
        Gen.Select(Gen.Double[10, 5000], Gen.Double[0, 5000], Gen.Double[0, 3000], Gen.Double[40, 200])
            .Sample((flour, water, preferment, hydration) =>
            {
                var dough = new DoughMasses(flour, water, preferment, hydration);
                return Near(dough.FlourG + dough.WaterG, flour + water + preferment);
            });

    [Theory]
    [InlineData(-1, 0, 0, 0, "flourG")]
    [InlineData(1, -1, 0, 0, "waterG")]
    [InlineData(1, 0, -1, 0, "prefermentG")]
    [InlineData(1, 0, 0, -1, "prefermentHydrationPct")]
    [InlineData(0, 10, 0, 0, "flourG")]
    public void Negative_mass_and_no_flour_are_programming_errors(
        double flour, double water, double preferment, double hydration, string parameter) =>
        Assert.Equal(
            parameter,
            Assert.Throws<ArgumentOutOfRangeException>(() => new DoughMasses(flour, water, preferment, hydration)).ParamName);

    private static bool Near(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(1, Math.Abs(one));
}
