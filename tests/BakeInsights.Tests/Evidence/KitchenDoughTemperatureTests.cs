using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class KitchenDoughTemperatureTests
{
    private static readonly MixingConditions Usual = new(Temperature.FromC(20), Temperature.FromC(22)) { MixMin = 10 };
    private static readonly KitchenWater Taps = new(Temperature.FromC(5), Temperature.FromC(60));

    [Fact]
    public void Without_bakes_the_dough_is_what_physics_and_trade_figures_make_it()
    {
        var learned = KitchenDoughTemperature.Learn([]).Value;

        // 24 + 20 °F / 3 + 0.475 (18 - 24) + 0.3 (20 - 24) + 0.175 (22 - 24) + 2 °F / 3 (10 - 8): middles of the bands.
        var dough = learned.At(Temperature.FromC(18), Usual);
        Assert.Equal(24 + (20 / 5.4) - 2.85 - 1.2 - 0.35 + (4 / 5.4), dough.Estimate, 1e-9);
        Assert.Equal(learned.Parts.Select(part => part.Physics), learned.Parts.Select(part => part.Together));
        Assert.All(learned.Parts, part => Assert.Equal((null, "There is no bake."), (part.Journal, part.WhyNoJournal)));

        // The middle of 0.35 to 0.6, and 1.96 times half its width to either side.
        var water = learned.Part("water").Physics;
        Assert.Equal((0.475, 0.230, 0.720), (water.Value, Math.Round(water.Low!.Value, 3), Math.Round(water.High!.Value, 3)));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(20)]
    [InlineData(35)]
    public void Without_bakes_the_heat_balance_lies_where_a_dough_is_expected(double waterC)
    {
        var balance = new HeatBalance(1_000, Usual.Flour, 650).Dough(Temperature.FromC(waterC));

        var dough = KitchenDoughTemperature.Learn([]).Value.At(Temperature.FromC(waterC), Usual);

        Assert.True(dough.Mean.Contains(balance.C), $"{balance} is not in {dough.Mean}.");
    }

    [Fact]
    public void The_journal_alone_is_least_squares_as_R_has_it()
    {
        var lines = File.ReadAllLines(Repository.ReferenceData("r/kitchen-dough-expected.csv"));
        var learned = KitchenDoughTemperature.Learn(Csv.Read(File.ReadAllLines(Repository.ReferenceData("r/kitchen-dough.csv"))).Bakes).Value;

        Assert.Equal(40, learned.Used.Count);
        Assert.Equal(lines.Skip(1).Select(line => line.Split(',')[0]), learned.Parts.Select(part => part.Name));
        foreach (var (line, part) in lines.Skip(1).Zip(learned.Parts))
        {
            var expected = line.Split(',').Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToList();
            Nearly.Equal(expected[0], part.Journal!.Value);
            Nearly.Equal(expected[1], part.Journal.Low);
            Nearly.Equal(expected[2], part.Journal.High);
        }
    }

    [Fact]
    public void With_many_bakes_both_together_tend_to_least_squares()
    {
        var odd = DoughKitchen.Middle with { Water = 0.2, Flour = 0.5, Room = 0.4 };
        var learned = KitchenDoughTemperature.Learn(odd.Bakes(5_000, new Random(5))).Value;

        Assert.All(learned.Parts, part =>
        {
            var width = part.Journal!.High!.Value - part.Journal.Low!.Value;
            Assert.Equal(part.Journal.Value, part.Together.Value, 0.1 * width);
            Assert.Equal(width, part.Together.High!.Value - part.Together.Low!.Value, 0.1 * width);
        });
        Assert.Equal(0.7, learned.Scatter.C, 0.02);
    }

    [Fact]
    public void Each_bake_more_narrows_what_is_believed_of_the_water()
    {
        var bakes = DoughKitchen.Middle.Bakes(48, new Random(7));
        double[] widths =
        [
            .. new[] { 0, 3, 12, 48 }.Select(count =>
            {
                var water = KitchenDoughTemperature.Learn([.. bakes.Take(count)]).Value.Part("water").Together;
                return water.High!.Value - water.Low!.Value;
            }),
        ];

        Assert.Equal(widths.OrderDescending(), widths);
        Assert.Equal(widths.Length, widths.Distinct().Count());
    }

    // Numbers 1, 2, 4, 4 and 6 of the worked examples in docs/reference/examples.md: all in °F.
    [Theory]
    [InlineData(75, 65, 65, 8, 87)]
    [InlineData(80, 65, 75, 35, 65)]
    [InlineData(78, 67, 85, 0, 82)]
    [InlineData(78, 62, 72, 0, 100)]
    [InlineData(78, 60, 70, 16, 88)]
    public void A_kitchen_that_follows_the_rule_of_three_gets_the_water_of_the_rule(
        double dough, double flour, double room, double friction, double water)
    {
        // Three temperatures and the friction averaged; the scatter of a hundredth of a degree lets it be learned.
        var rule = new DoughKitchen(friction / 5.4, 1 / 3.0, 1 / 3.0, 1 / 3.0, 0, 0.01);
        var learned = KitchenDoughTemperature.Learn(rule.Bakes(400, new Random(11))).Value;

        var needed = learned.WaterFor(
            Temperature.FromF(dough), new(Temperature.FromF(flour), Temperature.FromF(room)) { MixMin = 8 }, Taps, 650).Value;

        Assert.Equal(water, Temperature.FromC(needed.WaterC.Value).F, 0.1);
    }

    [Fact]
    public void Degrees_Fahrenheit_and_Celsius_give_the_same_answer()
    {
        static string Line(int i, Func<double, double> shown) => string.Create(
            CultureInfo.InvariantCulture,
            $"B{i},2026-10-01,{shown(15 + (i * 7 % 11)):R},{shown(17 + (i * 5 % 7)):R},{shown(18 + (i * 3 % 8)):R},{6 + (i % 4)},{shown(21 + (i * 7 % 11 * 0.4) + (i * 3 % 8 * 0.2) + (i * i % 5 * 0.3)):R}");
        static KitchenDoughTemperature Of(string unit, Func<double, double> shown) => KitchenDoughTemperature.Learn(Csv.Read(
        [
            $"bake_id,baked_on,water_temp_{unit},flour_temp_{unit},room_temp_{unit},mix_min,dough_temp_{unit}",
            .. Enumerable.Range(1, 12).Select(i => Line(i, shown)),
        ]).Bakes).Value;
        var celsius = Of("c", c => c);
        var fahrenheit = Of("f", c => (c * 1.8) + 32);

        foreach (var (one, other) in celsius.Parts.Zip(fahrenheit.Parts))
        {
            Assert.Equal(one.Together.Value, other.Together.Value, 1e-9);
            Assert.Equal(one.Journal!.Low!.Value, other.Journal!.Low!.Value, 1e-9);
        }

        var c = celsius.WaterFor(Temperature.FromC(25), Usual, Taps, 650).Value;
        var f = fahrenheit.WaterFor(
            Temperature.FromF(77), new(Temperature.FromF(68), Temperature.FromF(71.6)) { MixMin = 10 },
            new(Temperature.FromF(41), Temperature.FromF(140)), 650).Value;
        Assert.Equal(c.WaterC.Value, f.WaterC.Value, 1e-9);
        Assert.Equal(c.WaterC.Low!.Value, f.WaterC.Low!.Value, 1e-8);
        Assert.Equal(c.WaterC.High!.Value, f.WaterC.High!.Value, 1e-8);
        Assert.Equal(c.Dough.Prediction.High, f.Dough.Prediction.High, 1e-9);
    }

    [Fact]
    public void The_dough_of_the_needed_water_is_the_dough_wanted_and_the_ends_are_where_the_mean_s_interval_meets_it()
    {
        var learned = KitchenDoughTemperature.Learn(DoughKitchen.Middle.Bakes(9, new Random(3))).Value;
        var needed = learned.WaterFor(Temperature.FromC(25), Usual, Taps, 650).Value;

        Assert.Equal(25, needed.Dough.Estimate, 0.02);
        Assert.Equal(25, learned.At(Temperature.FromC(needed.WaterC.Low!.Value), Usual).Mean.High, 1e-6);
        Assert.Equal(25, learned.At(Temperature.FromC(needed.WaterC.High!.Value), Usual).Mean.Low, 1e-6);
    }

    [Fact]
    public void Mixing_for_the_usual_time_is_taken_where_no_time_is_given()
    {
        var learned = KitchenDoughTemperature.Learn(DoughKitchen.Middle.Bakes(9, new Random(3))).Value;
        var asked = Usual with { MixMin = null };
        var needed = learned.WaterFor(Temperature.FromC(25), asked, Taps, 650).Value;

        Assert.Equal(learned.UsualMixMin, needed.Conditions.MixMin);
        Assert.Equal(
            learned.At(Temperature.FromC(20), asked), learned.At(Temperature.FromC(20), Usual with { MixMin = learned.UsualMixMin }));
        Assert.Equal(8, KitchenDoughTemperature.Learn([]).Value.UsualMixMin);
    }

    [Fact]
    public void Arguments_that_mean_nothing_are_programming_errors()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Usual with { MixMin = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Usual with { MixMin = double.NaN });
        var failure = Assert.Throws<ArgumentException>(() => KitchenDoughTemperature.Learn([]).Value.Part("bowl"));
        Assert.StartsWith("No cause is named bowl; there are warming, water, flour, room, mixing.", failure.Message, StringComparison.Ordinal);
    }
}
