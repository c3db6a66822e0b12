using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class NextBakesTests
{
    private static readonly IReadOnlyList<Bake> Month = DemoJournal.Journal.Bakes;

    private static BakeInsights.NextBakes Plan(NextBakesWish wish, int seed = 1) => BakeInsights.NextBakes.Plan(Month, wish, seed).Value;

    [Fact]
    public void Bakes_lie_within_what_was_asked_at_steps_that_a_kitchen_can_set()
    {
        var wish = new NextBakesWish { Bakes = 6, HydrationPct = new(61.3, 71.8), DoughTemperatureC = new(22, 26), YeastPct = new(0.7, 1.2) };
        foreach (var question in NarrowedQuestion.All)
        {
            var plan = Plan(wish with { Question = question });
            Assert.Equal(Enumerable.Range(1, 6), plan.Bakes.Select(bake => bake.Order));
            Assert.All(plan.Bakes, bake =>
            {
                Assert.InRange(bake.HydrationPct, 61.3, 71.8);
                Assert.InRange(bake.DoughTemperatureC, 22, 26);
                Assert.InRange(bake.YeastPct, 0.7, 1.2);
                Assert.Equal(Math.Round(bake.HydrationPct), bake.HydrationPct);
                Assert.Equal(Math.Round(2 * bake.DoughTemperatureC), 2 * bake.DoughTemperatureC);
                Assert.Equal(Math.Round(10 * bake.YeastPct), 10 * bake.YeastPct, 1e-9);
            });
        }
    }

    [Fact]
    public void With_US_units_dough_temperatures_are_whole_degrees_Fahrenheit() => Assert.All(
        Plan(new NextBakesWish { Units = UnitSystem.Us }).Bakes,
        bake => Assert.Equal(Math.Round(Temperature.FromC(bake.DoughTemperatureC).F), Temperature.FromC(bake.DoughTemperatureC).F, 1e-6));

    [Fact]
    public void A_slope_is_asked_at_the_ends_of_what_may_be_baked()
    {
        // For a straight line the ends tell most: Atkinson, Donev and Tobias (2007), section 2.2.
        var plan = Plan(new NextBakesWish { Question = NarrowedQuestion.RiseByYeast, YeastPct = new(0.6, 1.4) });

        // And both of them, so that what changed since the old bakes can't pass for the yeast.
        Assert.Equal([0.6, 1.4], plan.Bakes.Select(bake => bake.YeastPct).Distinct().Order());
    }

    [Fact]
    public void No_two_settings_move_together_over_old_and_new_bakes()
    {
        // Wet doughs were warm ones; the new bakes have to take the two apart.
        var entangled = Dough.Bakes(8, (dough, i) => dough with { Celsius = 22 + (0.5 * i), HydrationPct = 62 + i + (0.01 * (i % 2)) });
        foreach (var question in NarrowedQuestion.All)
        {
            var plan = BakeInsights.NextBakes.Plan(entangled, new NextBakesWish { Question = question, Bakes = 6 }, 1).Value;
            Assert.Empty(plan.StillTogether);
            var correlation = MovedTogether.Correlation(
                [.. entangled.Select(bake => Measures.DoughTemperature.Of(bake)!.Value), .. plan.Bakes.Select(bake => bake.DoughTemperatureC)],
                [.. entangled.Select(bake => Measures.Hydration.Of(bake)!.Value), .. plan.Bakes.Select(bake => bake.HydrationPct)])!.Value;
            Assert.True(question == NarrowedQuestion.RiseByYeast || correlation * correlation < 0.9, $"{question.Name}: {correlation}");
        }
    }

    [Fact]
    public void More_bakes_narrow_more_and_the_bakes_needed_reach_the_wish()
    {
        var few = Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, Bakes = 2 }).Narrowing!;
        var many = Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, Bakes = 16 }).Narrowing!;
        Assert.Equal(few.Now, many.Now);
        Assert.True(many.After < few.After && few.After < few.Now.Half);
        Assert.True(few.After <= few.AfterAtWorst);

        var wished = Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, Until = many.After * 1.001 });
        Assert.InRange(wished.BakesUntil!.Value, 6, 32);
        Assert.Equal(0, Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, Until = 1.01 * few.Now.Half }).BakesUntil);
        Assert.Null(Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, Until = 0.05 }).BakesUntil);
    }

    [Fact]
    public void Now_is_the_interval_of_the_fit()
    {
        var best = DemoJournal.LoafVolume.BestHydration!;
        var now = Plan(new NextBakesWish { Question = NarrowedQuestion.BestHydration, HydrationPct = new(50, 90) }).Narrowing!.Now;

        Assert.Equal(best.Low!.Value, now.Low, 1e-9);
        Assert.Equal(best.High!.Value, now.High, 1e-9);
    }

    [Fact]
    public void Water_brings_the_dough_to_its_temperature_by_the_kitchens_own_model()
    {
        var plan = Plan(new NextBakesWish { DoughTemperatureC = new(22, 26) });
        var kitchen = KitchenDoughTemperature.Learn(Month).Value;
        double Middle(QuantityColumn column) => Inference.Quantiles.Median(kitchen.Used.Select(bake => bake[column]!.Value));
        var conditions = new MixingConditions(
            Temperature.FromC(Middle(BakeColumns.FlourTemp)), Temperature.FromC(Middle(BakeColumns.RoomTemp)));

        Assert.Equal("", plan.WhyNoWater);
        Assert.All(plan.Bakes, bake => Assert.Equal(
            bake.DoughTemperatureC, kitchen.At(Temperature.FromC(bake.WaterC!.Value), conditions).Estimate, 0.05));
    }

    [Fact]
    public void A_journal_too_short_for_a_fit_gets_bakes_without_a_forecast()
    {
        IReadOnlyList<Bake> few = [.. Month.Take(3)];
        var plan = BakeInsights.NextBakes.Plan(
            few, new NextBakesWish { Question = NarrowedQuestion.BestHydration, HydrationPct = new(60, 74), Bakes = 8 }, 1).Value;

        Assert.Equal(8, plan.Bakes.Count);
        Assert.Null(plan.Narrowing);
        Assert.StartsWith("The journal's bakes are too few", plan.WhyNoForecast, StringComparison.Ordinal);
    }

    [Fact]
    public void What_makes_a_plan_impossible_is_said_with_what_would_help()
    {
        Refuses([], new NextBakesWish(), "No bake says its dough temperature, so what can be baked isn't known.", "Say the range of dough temperature that you can bake.");
        Refuses(
            Month, new NextBakesWish { Question = NarrowedQuestion.BestHydration, HydrationPct = new(65, 66) },
            "The hydration is allowed so little room that it has fewer than 3 values to choose from.", "Say a wider range of hydration that you can bake.");
        Refuses(
            [.. Month.Take(1)],
            new NextBakesWish
            {
                Question = NarrowedQuestion.BestHydration, Bakes = 3, HydrationPct = new(60, 74), DoughTemperatureC = new(22, 26), YeastPct = new(1, 1),
            },
            "To ask this takes 6 bakes, and with 3 more there are 4.", "Plan 5 or more bakes.");
        Assert.Throws<ArgumentOutOfRangeException>(() => new NextBakesWish { Bakes = 25 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new NextBakesWish { Until = 0 });
    }

    [Fact]
    public void Same_seed_same_plan() => Gen.Int[0, 1000].Sample(
        seed =>
        {
            var (one, other) = (Plan(new NextBakesWish(), seed), Plan(new NextBakesWish(), seed));
            Assert.Equal(one.Bakes, other.Bakes);
            Assert.Equal(one.Narrowing, other.Narrowing);
        },
        iter: 5);

    private static void Refuses(IReadOnlyList<Bake> bakes, NextBakesWish wish, string message, string remedy)
    {
        Assert.False(BakeInsights.NextBakes.Plan(bakes, wish, 1).TryGet(out _, out var problem));
        Assert.Equal((message, remedy), (problem.Message, problem.Remedy));
    }
}
