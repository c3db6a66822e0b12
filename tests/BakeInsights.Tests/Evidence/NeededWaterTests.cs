using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What is said of the water that a kitchen's dough takes, word for word, and that it is always a number.</summary>
public class NeededWaterTests
{
    private static readonly KitchenWater Taps = new(Temperature.FromC(16), Temperature.FromC(50), 100);

    // Doughs that are 24 + 3.7 + 0.475 (water - 24) + ... to the digit: water 18 to 28 °C, flour 19 to 23, room 20 to 24, 6 to 9 min.
    private static readonly KitchenDoughTemperature Learned = KitchenDoughTemperature.Learn([.. Enumerable.Range(0, 40).Select(i =>
    {
        double water = 18 + (i * 7 % 11), flour = 19 + (i * 3 % 5), room = 20 + (i * 2 % 5), minutes = 6 + (i % 4);
        return DoughKitchen.Bake(i, water, flour, room, minutes, DoughKitchen.Middle.DoughC(water, flour, room, minutes) + (0.1 * ((i * i % 3) - 1)));
    })]).Value;

    private static IReadOnlyList<string> Warnings(
        double dough, double flour, double room, double? minutes, UnitSystem units, KitchenWater? taps = null, KitchenDoughTemperature? learned = null) =>
        (learned ?? Learned)
            .WaterFor(Temperature.FromC(dough), new(Temperature.FromC(flour), Temperature.FromC(room)) { MixMin = minutes }, taps ?? Taps, 1_000)
            .Value.Warnings(units);

    [Fact]
    public void Water_inside_all_that_was_seen_and_that_the_taps_give_has_no_warning() => Assert.Empty(Warnings(25, 21, 22, 8, UnitSystem.Metric));

    [Fact]
    public void Each_setting_outside_the_journal_is_named_with_what_was_seen_in_either_unit()
    {
        var metric = Warnings(20, 26, 28, 12, UnitSystem.Metric, new(Temperature.FromC(0), Temperature.FromC(50)));
        Assert.Matches(
            @"^Water temperature of \d\.\d °C is outside what the journal's bakes had \(18\.0 °C to 28\.0 °C\); that the line goes on there is an assumption\.$",
            metric[0]);
        Assert.Equal(
            [
                "Flour temperature of 26.0 °C is outside what the journal's bakes had (19.0 °C to 23.0 °C); that the line goes on there is an assumption.",
                "Room temperature of 28.0 °C is outside what the journal's bakes had (20.0 °C to 24.0 °C); that the line goes on there is an assumption.",
                "Mixing time of 12 min is outside what the journal's bakes had (6 min to 9 min); that the line goes on there is an assumption.",
            ],
            metric.Skip(1));
        Assert.Equal(
            "Flour temperature of 79 °F is outside what the journal's bakes had (66 °F to 73 °F); that the line goes on there is an assumption.",
            Warnings(20, 26, 28, 12, UnitSystem.Us)[1]);
    }

    [Fact]
    public void Water_too_warm_for_yeast_and_beyond_the_hot_tap_is_warned_of()
    {
        var warnings = Warnings(42, 21, 22, 8, UnitSystem.Us);

        Assert.Equal(
            [
                "Water temperature of 122 °F is outside what the journal's bakes had (64 °F to 82 °F); that the line goes on there is an assumption.",
                "Keep the yeast out of this water: 122 °F is above 113 °F. Warm flour or room instead, or let the dough rise longer.",
            ],
            warnings.Take(2));
        Assert.Matches(@"^The hot tap ends at 122 °F, \d+ °F short\. Warm the flour, or let the dough rise longer\.$", warnings[2]);
        Assert.Matches(@"^With water of 122 °F, the kitchen's limit, expect a dough of \d+ °F in place of 108 °F\.$", warnings[3]);
        Assert.Equal(4, warnings.Count);
    }

    [Fact]
    public void Water_colder_than_the_tap_takes_the_ice_that_the_trade_s_formula_asks_for()
    {
        var conditions = new MixingConditions(Temperature.FromC(21), Temperature.FromC(22)) { MixMin = 8 };
        var needed = Learned.WaterFor(Temperature.FromC(21), conditions, Taps, 1_000).Value;

        // ice = water x (tap - needed) / (tap + 112), in °F.
        var (tap, asked) = (60.8, (needed.WaterC.Value * 1.8) + 32);
        Assert.Equal(1_000 * (tap - asked) / (tap + 112), needed.Plan.IceG, 1e-6);
        Assert.InRange(needed.Plan.IceG, 1, 99);
        var grams = Math.Round(needed.Plan.IceG);
        Assert.Equal($"The cold tap gives 16.0 °C, too warm: put {grams} g of ice in place of as much water.", needed.Warnings(UnitSystem.Metric)[^1]);
        Assert.StartsWith("The cold tap gives 61 °F, too warm: put ", needed.Warnings(UnitSystem.Us)[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Ice_that_does_not_suffice_names_the_limit_and_the_dough_that_comes_of_it()
    {
        var warnings = Warnings(15, 21, 22, 8, UnitSystem.Metric);

        Assert.Equal("The cold tap gives 16.0 °C, too warm: put 100 g of ice in place of as much water.", warnings[1]);
        Assert.Matches(
            @"^The ice at hand cools the water only to 6\.\d °C, \d+\.\d °C short\. Chill the flour, or mix for a shorter time\.$", warnings[2]);
        Assert.Matches(@"^With water of 6\.\d °C, the kitchen's limit, expect a dough of 1\d\.\d °C in place of 15\.0 °C\.$", warnings[3]);
    }

    [Fact]
    public void Without_bakes_the_first_warning_says_so() => Assert.Equal(
        ["No bake of this kitchen is behind this: it is the physical balance alone."],
        Warnings(25, 21, 22, 8, UnitSystem.Metric, learned: KitchenDoughTemperature.Learn([]).Value));

    [Fact]
    public void An_open_end_is_said()
    {
        // Forty doughs on which the water had next to no effect, against a physics that says 0.475.
        var flat = KitchenDoughTemperature.Learn([.. Enumerable.Range(0, 40).Select(i => DoughKitchen.Bake(
            i, 18 + (i * 7 % 11), 19 + (i * 3 % 5), 20 + (i * 2 % 5), 6 + (i % 4), 26 + (0.02 * (i * 7 % 11)) + (0.9 * ((i * i % 3) - 1))))]).Value;
        Assert.True(flat.Part("water").Together.Low < 0);

        Assert.Contains(
            "The water's interval has an open end: the bakes leave in doubt that warmer water makes a warmer dough.",
            Warnings(25, 21, 22, 8, UnitSystem.Metric, learned: flat));
    }

    [Fact]
    public void Whatever_was_logged_all_numbers_are_finite() => Gen.Select(
        Gen.OneOf(Gen.Double[0, 70], Gen.Const(0.0), Gen.Const(70.0), Gen.Const(20.0)),
        Gen.OneOf(Gen.Double[-20, 45], Gen.Const(20.0)),
        Gen.OneOf(Gen.Double[-10, 50], Gen.Const(20.0)),
        Gen.OneOf(Gen.Double[0, 60], Gen.Const(8.0)),
        Gen.OneOf(Gen.Double[0, 50], Gen.Const(0.0), Gen.Const(24.0))).Array[0, 12].Sample(
        rows =>
        {
            var learned = KitchenDoughTemperature.Learn(
                [.. rows.Select((row, i) => DoughKitchen.Bake(i, row.Item1, row.Item2, row.Item3, row.Item4, row.Item5))]).Value;
            var conditions = new MixingConditions(Temperature.FromC(20), Temperature.FromC(20));
            var at = learned.At(Temperature.FromC(20), conditions);
            double?[] numbers =
            [
                .. learned.Parts.SelectMany(part => new[] { part.Physics, part.Journal, part.Together }).OfType<Estimate>()
                    .SelectMany(estimate => new[] { estimate.Value, estimate.Low, estimate.High }),
                .. learned.Parts.Select(part => part.ConflictPValue), at.Estimate, at.Mean.Low, at.Prediction.High, learned.Scatter.C,
            ];
            Assert.All(numbers, number => Assert.True(number is null || double.IsFinite(number.Value)));
            Assert.True(at.Prediction.Low < at.Mean.Low && at.Mean.High < at.Prediction.High);
            Assert.All(learned.Caveats(UnitSystem.Us), caveat => Assert.DoesNotContain("NaN", caveat, StringComparison.Ordinal));
            if (learned.WaterFor(Temperature.FromC(24), conditions, Taps, 650).TryGet(out var needed, out var problem))
            {
                Assert.True(double.IsFinite(needed.WaterC.Value) && !(needed.WaterC.Low > needed.WaterC.Value) && !(needed.WaterC.High < needed.WaterC.Value));
                Assert.DoesNotContain(needed.Warnings(UnitSystem.Metric), warning => warning.Contains("NaN", StringComparison.Ordinal));
            }
            else
            {
                Assert.NotEmpty(problem.Remedy);
            }
        },
        iter: 150);
}
