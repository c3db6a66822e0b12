using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class TuningTests
{
    private static readonly IReadOnlyList<Bake> Demo = DemoJournal.Journal.Bakes;

    private static TuneWish Wish(double minutes = 90, double volume = 4.2) => new([TuneGoal.ReadyWithin(minutes), TuneGoal.VolumeAtLeast(volume)]);

    [Fact]
    public void A_formula_keeps_to_the_limits_and_to_what_was_baked()
    {
        var answer = Tuning.Ask(Demo, Wish() with { DoughTemperatureC = new(22, 26), HydrationPct = new(62, 68) }, 1).Value;
        Assert.InRange(answer.Best.Settings[Measures.DoughTemperature]!.Value, 22, 26);
        Assert.InRange(answer.Best.Settings[Measures.Hydration]!.Value, 62, 68);
        Assert.True(answer.Best.IsBaked);
    }

    [Fact]
    public void Narrower_limits_never_give_a_better_chance()
    {
        // Chances of one set of draws, counted to a percent or so.
        var free = Tuning.Ask(Demo, Wish(), 1).Value.Best.Chance.Value;
        Gen.Double[22, 25].Sample(
            warmest => Tuning.Ask(Demo, Wish() with { DoughTemperatureC = new(20, warmest) }, 1).Value.Best.Chance.Value <= free + 0.02, iter: 5);
    }

    [Fact]
    public void A_stricter_wish_never_has_a_better_chance() => Assert.True(
        Tuning.Ask(Demo, Wish(80), 1).Value.Best.Chance.Value <= Tuning.Ask(Demo, Wish(100), 1).Value.Best.Chance.Value + 0.02);

    [Fact]
    public void Where_the_house_formula_does_it_already_no_change_is_advised()
    {
        var answer = Tuning.Ask(Demo, Wish(minutes: 170, volume: 3), 1).Value;
        Assert.False(answer.IsChange);
        Assert.Equal(answer.House, answer.Advised);
        Assert.True(answer.House.Chance.Value > 0.95);
    }

    [Fact]
    public void The_bound_that_makes_all_wishes_safe_lies_on_the_side_that_gives_up_something()
    {
        var costs = Tuning.Ask(Demo, Wish(), 1).Value.Costs;
        var volume = costs.Single(cost => cost.Goal.Result == Measures.SpecificVolume).SafeBound!.Value;
        Assert.InRange(volume, 3.5, 4.2);

        // With that bound the best chance is the safe one or better.
        Assert.True(Tuning.Ask(Demo, Wish(volume: volume), 1).Value.Best.Chance.Value >= Tuning.SafeChance - 0.02);
    }

    [Fact]
    public void A_wish_beyond_the_journal_is_out_of_reach_with_what_is_possible()
    {
        var answer = Tuning.Ask(Demo, new TuneWish([TuneGoal.ReadyWithin(5)]), 1).Value;
        var reach = Assert.Single(answer.OutOfReach);
        Assert.InRange(reach.Result.Estimate, 40, 80);
    }

    [Fact]
    public void The_same_seed_gives_the_same_answer() => Assert.Equal(
        Tuning.Ask(Demo, Wish(), 4).Value.Best.Chance, Tuning.Ask(Demo, Wish(), 4).Value.Best.Chance);

    // By definition of Fieller's set: at its ends the interval of the mean just reaches the time wanted.
    [Fact]
    public void At_the_ends_of_the_range_the_mean_can_just_not_be_told_from_the_time()
    {
        const double minutes = 90;
        var asked = ReadyBy.Ask(Demo, minutes).Value;
        var rise = RiseTime.Ask(Demo).Value;
        var needed = asked.DoughTemperature!.OnAverage;
        double MeanAt(double celsius) => rise.At(asked.House.With(Measures.DoughTemperature, celsius)).Estimate;
        Assert.Equal(minutes, MeanAt(needed.Value), 1e-6);
        Assert.Equal(minutes, rise.At(asked.House.With(Measures.DoughTemperature, needed.Low!.Value)).Mean.Low, 1e-6);
        Assert.Equal(minutes, rise.At(asked.House.With(Measures.DoughTemperature, needed.High!.Value)).Mean.High, 1e-6);
    }
}
