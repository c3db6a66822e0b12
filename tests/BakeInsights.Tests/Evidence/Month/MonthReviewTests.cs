using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

public class MonthReviewTests
{
    private static readonly Journal Demo = DemoJournal.Journal;

    [Fact]
    public void Questions_handed_in_are_judged_together_with_the_months_own()
    {
        var own = MonthReview.Of(Demo, "");
        var further = own.Family.Answers[0] with { Name = "own.question", PValue = 1e-30 };
        var review = MonthReview.Of(Demo, "", [further], [new OpenQuestion("x", "Why?", "Because.", "Bake.")]);
        Assert.Equal(own.Family.Answers.Count + 1, review.Family.Answers.Count);
        Assert.Equal("own.question", review.Family.Answers[0].Name);
        Assert.Equal("x", review.Family.Open[0].Name);
        Assert.Equal(review.Family.Answers.Sum(answer => answer.Weight) / further.Weight * 1e-30, review.Family.Answers[0].FamilyPValue, 1e-36);
    }

    [Fact]
    public void A_name_of_the_months_own_is_refused() => Assert.Throws<ArgumentException>(
        () => MonthReview.Of(Demo, "", [MonthReview.Of(Demo, "").Family.Answers[0]], []));

    [Fact]
    public void The_first_month_of_a_journal_has_its_comparisons_open()
    {
        var review = MonthReview.Of(Demo, "2026-10");
        Assert.Null(review.Before);
        Assert.Equal(6, review.Family.Open.Count(open => open.Name.StartsWith("month.", StringComparison.Ordinal)));
        Assert.Equal(["friction_factor.drift", "bake_loss.drift"], review.Family.Answers.Select(answer => answer.Name).TakeLast(2));
    }

    [Fact]
    public void Charts_signals_are_outside_the_family()
    {
        var bakes = Dough.Bakes(20, (dough, index) => new Dough { Celsius = index == 12 ? 32 : 24 + (0.2 * (index % 3)) });
        var chart = MonthChart.Of(Measures.DoughTemperature, bakes).Value;
        Assert.Contains(chart.Signals, signal => signal is { Rule: RunRule.OneBeyondThree, First: 12, Last: 12 });
    }

    [Fact]
    public void A_long_run_on_one_side_is_one_prompt()
    {
        var bakes = Dough.Bakes(24, (_, index) => new Dough { Celsius = (index < 12 ? 22 : 26) + (0.5 * (index % 2)) });
        var runs = MonthChart.Of(Measures.DoughTemperature, bakes).Value.Signals.Where(signal => signal.Rule == RunRule.EightOnOneSide);
        Assert.Equal([(0, 11), (12, 23)], runs.Select(signal => (signal.First, signal.Last)));
    }

    [Fact]
    public void Rise_times_are_charted_as_standardised_residuals()
    {
        var answer = DemoJournal.RiseTime;
        var chart = MonthChart.Of(answer, Demo.BakesOfMonth("")).Value;
        Assert.Equal(answer.Used, chart.Bakes);
        var squares = chart.Chart.Values.Select((z, row) => z * z * (1 - answer.Fit.Leverage[row])).Sum();
        Assert.Equal(answer.Fit.ResidualDegreesOfFreedom, squares, 1e-8);
        Assert.Equal(Demo.Bakes.Count, chart.Bakes.Count + chart.LeftOut.Sum(left => left.Count));
    }

    [Fact]
    public void A_month_that_lies_above_what_is_expected_throughout_gives_a_signal()
    {
        // Forty doughs of the trade's slopes, then twelve that each took a quarter longer than they would have before.
        var bakes = Dough.Bakes(52, (dough, index) => dough with { RiseMin = dough.RiseMin * (index < 40 ? 1 : 1.25) });
        Bake[] month = [.. bakes.Skip(40)];
        var chart = MonthChart.Of(RiseTime.Ask(bakes).Value, month).Value;
        Assert.Equal(0, chart.Centre);
        Assert.Equal(0, chart.Limits.Low + chart.Limits.High, 1e-12);
        Assert.All(chart.Chart.Values, value => Assert.True(value > 0));
        Assert.Contains(chart.Signals, signal => signal is { Rule: RunRule.EightOnOneSide, First: 0, Last: 11 });

        // About the month's own mean there is none.
        Assert.Empty(chart.Chart.Signals([RunRule.EightOnOneSide]));
    }

    [Fact]
    public void Best_and_worst_bakes_have_reasons_only_on_their_own_side()
    {
        var ranking = BestAndWorst.ByVolume(Demo.Bakes, Demo.Bakes)!;
        Assert.Equal(3, ranking.Best.Count);
        Assert.Equal(Demo.Bakes.Max(bake => Measures.SpecificVolume.Of(bake)), ranking.Best[0].Value);
        Assert.Equal(Demo.Bakes.Min(bake => Measures.SpecificVolume.Of(bake)), ranking.Worst[0].Value);
        Assert.All(ranking.Best.SelectMany(one => one.Reasons), reason => Assert.True(reason.Effect.Low > 0));
        Assert.All(ranking.Worst.SelectMany(one => one.Reasons), reason => Assert.True(reason.Effect.High < 0));
        Assert.NotEmpty(ranking.Worst.SelectMany(one => one.Reasons));
    }

    // Volume rises by 0.1 a point with hydration; only the driest bake lies off the middle.
    [Fact]
    public void A_reason_states_what_the_model_expects_of_the_setting()
    {
        var bakes = Dough.Bakes(20, (_, index) =>
        {
            double hydration = index == 0 ? 56 : 64 + (index % 5);
            return new Dough { HydrationPct = hydration, Celsius = 24, SpecificVolume = 4 + (0.1 * (hydration - 66)) + (index % 2 == 0 ? 0.002 : -0.002) };
        });
        var worst = BestAndWorst.ByVolume(bakes, bakes)!.Worst[0];
        var reason = Assert.Single(worst.Reasons);
        Assert.Equal(("B1", Measures.Hydration, 56), (worst.Bake.Id, reason.Setting, reason.Value));
        Assert.Equal(-1, reason.Effect.Value, 0.05);
    }

    [Fact]
    public void Few_bakes_are_never_both_best_and_worst()
    {
        var bakes = Dough.Bakes(5, (dough, index) => dough with { SpecificVolume = 4 + (0.1 * index) });
        var ranking = BestAndWorst.ByVolume(bakes, bakes)!;
        Assert.Equal(["B5", "B4"], ranking.Best.Select(one => one.Bake.Id));
        Assert.Equal(["B1", "B2"], ranking.Worst.Select(one => one.Bake.Id));
        Assert.Null(BestAndWorst.ByVolume([.. bakes.Take(1)], bakes));
    }

    [Fact]
    public void The_habit_that_would_help_most_bakes_is_named()
    {
        var journal = Csv.Read(
            "bake_id,baked_on,flour_g,flour_measure,water_g,rise_min,rise_not_ready_min,dough_temp_c",
            "A,2026-10-01,1000,scooped,650,100,50,24",
            "B,2026-10-02,1000,scooped,650,100,90,24",
            "C,2026-10-03,1000,weighed,650,100,,",
            "D,not a day,1000,weighed,650,100,,24");
        var quality = MonthQuality.Of(journal, journal.Bakes);
        Assert.Equal((3, 3, 2, 1, 2, 1), (quality.Bakes, quality.Rises, quality.Spans, quality.WideSpans, quality.ByCup, quality.SetAside));
        Assert.Equal(1, quality.Missing.Single(missing => missing.Column == "dough_temp_c").Count);
        Assert.DoesNotContain(quality.Missing, missing => missing.Column is "flour_g" or "yeast_kind");
        Assert.Equal(("loaf_g", 3), (quality.Missing[0].Column, quality.Missing[0].Count));
        Assert.Equal(new Habit("Write down the mean mass of a loaf of every bake.", 3), quality.BestHabit);
    }

    [Fact]
    public void What_to_do_next_takes_one_of_each_kind_first_and_repeats_nothing()
    {
        var review = MonthReview.Of(Demo, "", Temperature.FromC(30));
        Assert.Equal(3, review.NextThings.Count);
        Assert.Equal(3, review.NextThings.Select(thing => thing.Words).Distinct().Count());
        Assert.Contains(review.NextThings, thing => thing.Words.StartsWith("Set the water's temperature", StringComparison.Ordinal));
    }
}
