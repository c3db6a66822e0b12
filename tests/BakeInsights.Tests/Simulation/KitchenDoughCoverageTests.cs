using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>How often the intervals of a kitchen's dough temperature hold the truth of a kitchen whose truth is known.</summary>
public class KitchenDoughCoverageTests
{
    private const int Kitchens = 300;
    private const double TargetC = 25;

    private static readonly string[] Causes = ["warming", "water", "flour", "room", "mixing"];
    private static readonly KitchenWater Taps = new(Temperature.FromC(10), Temperature.FromC(60), 1_000);

    [Theory]
    [InlineData(6)]
    [InlineData(12)]
    [InlineData(30)]
    public void Intervals_hold_the_truth_of_a_kitchen_drawn_from_the_bands_in_95_of_100(int bakes)
    {
        var runs = Run(bakes, LongRun.DataSets(Kitchens), DoughKitchen.Drawn);

        // Four standard deviations of a binomial share.
        var margin = 4 * Math.Sqrt(0.95 * 0.05 / runs.Length);
        Assert.All(Causes, cause => Assert.InRange(Share(runs, run => run.Parts[cause]), 0.95 - margin, 0.95 + margin));
        Assert.InRange(Share(runs, run => run.Water), 0.95 - margin, 0.95 + margin);
        Assert.InRange(Share(runs, run => run.Mean), 0.95 - margin, 0.95 + margin);
        Assert.InRange(Share(runs, run => run.OneMore), 0.95 - margin, 0.95 + margin);
    }

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] head =
        [
            "| bakes | kitchen | warming | water | flour | room | mixing | needed water | its width, °C | one more dough |",
            "|---|---|---|---|---|---|---|---|---|---|",
        ];
        var middle = DoughKitchen.Middle;
        var cases =
            from kitchen in new (string Text, Func<Random, DoughKitchen> Of)[]
            {
                ("drawn from the bands", DoughKitchen.Drawn),
                ("water at an end of its band, 0.60", _ => middle with { Water = 0.6 }),
                ("water two SD off, 0.225", _ => middle with { Water = 0.225 }),
            }
            from bakes in new[] { 6, 12, 30 }
            let runs = Run(bakes, LongRun.DataSets(2), kitchen.Of)
            select FormattableString.Invariant($"| {bakes} | {kitchen.Text} ")
                + string.Concat(Causes.Select(cause => $"| {LongRun.Percent(Share(runs, run => run.Parts[cause]))} % "))
                + $"| {LongRun.Percent(Share(runs, run => run.Water))} % "
                + FormattableString.Invariant($"| {runs.Select(run => run.Width).Order().ElementAt(runs.Length / 2):F1} ")
                + $"| {LongRun.Percent(Share(runs, run => run.OneMore))} % |";

        string[] lines = [.. head, .. cases];

        Assert.Equal(11, lines.Length);
        LongRun.Write("coverage-kitchen-dough", lines);
    }

    private static Held[] Run(int bakes, int kitchens, Func<Random, DoughKitchen> draw) =>
        LongRun.Simulate(kitchens, bakes, random =>
        {
            var truth = draw(random);
            var learned = KitchenDoughTemperature.Learn(truth.Bakes(bakes, random)).Value;
            var (water, flour, room, minutes) = DoughKitchen.Day(random);
            var mean = truth.DoughC(water, flour, room, minutes);
            var conditions = new MixingConditions(Temperature.FromC(flour), Temperature.FromC(room)) { MixMin = minutes };
            var forecast = learned.At(Temperature.FromC(water), conditions);
            var needed = learned.WaterFor(Temperature.FromC(TargetC), conditions, Taps, 650).Match<Estimate?>(found => found.WaterC, _ => null);
            return new Held(
                Causes.ToDictionary(cause => cause, cause => Holds(learned.Part(cause).Together, truth.PartOf(cause))),
                needed is not null && Holds(needed, truth.WaterC(TargetC, flour, room, minutes)),
                (needed?.High - needed?.Low) ?? double.PositiveInfinity,
                forecast.Mean.Contains(mean),
                forecast.Prediction.Contains(mean + (truth.Scatter * DoughKitchen.Normal(random))));
        });

    private static bool Holds(Estimate estimate, double truth) => !(truth < estimate.Low || truth > estimate.High);

    private static double Share(Held[] runs, Func<Held, bool> holds) => (double)runs.Count(holds) / runs.Length;

    private sealed record Held(Dictionary<string, bool> Parts, bool Water, double Width, bool Mean, bool OneMore);
}
