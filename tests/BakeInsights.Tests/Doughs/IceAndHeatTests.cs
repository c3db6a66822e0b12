using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class IceAndHeatTests
{
    private static readonly Temperature Minus18 = Temperature.FromC(-18);

    [Fact]
    public void Ice_in_place_of_water_takes_up_what_the_water_gives() =>
        Gen.Select(Gen.Double[1, 35], Gen.Double[-30, 35]).Where((tap, needed) => needed < tap).Sample((tap, needed) =>
        {
            var ice = Ice.Replacing(1_000, C(tap), C(needed));

            // Ice melts (80 of its own degrees) and warms from 0; the rest cools from the tap.
            return Math.Abs((ice * (80 + needed)) - ((1_000 - ice) * (tap - needed))) < 1e-8;
        });

    [Fact]
    public void Ice_on_top_takes_up_what_the_water_gives() =>
        Gen.Select(Gen.Double[1, 35], Gen.Double[0, 35]).Where((tap, needed) => needed < tap).Sample((tap, needed) =>
        {
            var ice = Ice.OnTop(1_000, C(tap), C(needed), Minus18);
            return Math.Abs((ice * (334 + (2.108 * 18) + (4.18 * needed))) - (1_000 * 4.18 * (tap - needed))) < 1e-6;
        });

    [Fact]
    public void No_ice_where_the_tap_is_cold_enough()
    {
        Assert.Equal(0, Ice.Replacing(1_000, C(10), C(10)));
        Assert.Equal(0, Ice.OnTop(1_000, C(10), C(12), Minus18));
    }

    [Fact]
    public void Ice_on_top_cannot_bring_water_below_freezing() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ice.OnTop(1_000, C(10), C(-1), Minus18));

    [Fact]
    public void Water_and_dough_of_the_balance_agree() =>
        Gen.Select(Gen.Double[0, 40], Gen.Double[200, 900], Gen.Double[-5, 15], Gen.Double[15, 35]).Sample((flour, water, mixing, dough) =>
        {
            var balance = new HeatBalance(1_000, C(flour), water)
            {
                MixingKjPerKgDough = mixing,
                Others = [HeatPart.Milk(100, C(8)), HeatPart.Preferment(300, 100, C(22))],
            };
            return Math.Abs(balance.Dough(balance.Water(C(dough))).C - dough) < 1e-9;
        });

    [Fact]
    public void Without_heats_a_dough_of_one_temperature_keeps_it() => Gen.Double[0, 40].Sample(c =>
        Math.Abs((new HeatBalance(1_000, C(c), 650) { HydrationKjPerKgFlour = 0, Others = [HeatPart.Milk(50, C(c))] }).Dough(C(c)).C - c) < 1e-9);

    // By hand: 500 g of a half-and-half preferment hold 250 g x 1.76 + 250 g x 4.18 = 1485 J a degree.
    [Fact]
    public void A_preferment_holds_the_heat_of_its_flour_and_water()
    {
        var part = HeatPart.Preferment(500, 100, C(20));
        Assert.Equal(1_485, part.Grams * part.SpecificHeat, 1e-9);
    }

    [Fact]
    public void A_degree_of_water_moves_the_dough_by_the_waters_share() => Gen.Double[300, 900].Sample(water =>
    {
        var balance = new HeatBalance(1_000, C(20), water);
        return Math.Abs((balance.Dough(C(11)) - balance.Dough(C(10))).C - balance.WaterShare) < 1e-9;
    });

    private static Temperature C(double degrees) => Temperature.FromC(degrees);
}
