using BakeInsights.Inference;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class RiseCurvesTests
{
    private static readonly double[] EveryTen = [.. Enumerable.Range(0, 15).Select(i => 10.0 * i)];

    // Errors of reading in mm, made up.
    private static readonly double[] Errors = [0.4, -0.3, 0.1, 0.6, -0.5, 0.2, -0.6, 0.3, 0.5, -0.2, -0.4, 0.3, 0.1, -0.3, 0.2];

    [Fact]
    public void Too_few_readings_say_how_many_more_to_take()
    {
        var problem = Problem(EveryTen[..4], Heights(new GompertzRise(1.6, 0.025, 20))[..4]);
        Assert.Equal(FitProblemKind.TooFewRows, problem.Kind);
        Assert.Equal(["height_mm"], problem.Columns);
        Assert.Equal("There are 4 readings of size, and a curve needs 7.", problem.Message);
        Assert.Equal("Take at least 3 more, at other minutes, until the rise has slowed.", problem.Remedy);
    }

    [Fact]
    public void No_reading_at_all_is_a_problem_too() =>
        Assert.Equal(FitProblemKind.TooFewRows, Problem([], []).Kind);

    [Fact]
    public void Flat_readings_say_how_many_more_to_take()
    {
        var problem = Problem(EveryTen, [.. Errors.Select(error => 50 + error)]);
        Assert.Equal(FitProblemKind.NoSpread, problem.Kind);
        Assert.EndsWith("take at least 3 more readings.", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_end_before_the_steepest_rise_say_how_many_more_to_take()
    {
        var problem = Problem(EveryTen[..9], Heights(new GompertzRise(3, 0.02, 60))[..9]);
        Assert.Equal(FitProblemKind.NoConvergence, problem.Kind);
        Assert.Matches("at least [12] more reading", problem.Remedy);
    }

    [Fact]
    public void Ceiling_below_doubled_has_no_time_to_double_and_says_why()
    {
        var fit = Answer(EveryTen, Heights(new GompertzRise(0.8, 0.02, 20))).Chosen;
        Assert.Null(fit.Doubling);
        Assert.StartsWith("The curve's ceiling is 1.", fit.NoDoubling, StringComparison.Ordinal);
        Assert.EndsWith("so it never reaches 2.", fit.NoDoubling, StringComparison.Ordinal);
    }

    [Fact]
    public void Ceiling_that_may_lie_below_doubled_leaves_the_time_to_double_without_upper_end()
    {
        var fit = Answer(EveryTen, Heights(new LogisticRise(1.01, 0.02, 20))).Chosen;
        Assert.True(fit.Ceiling.Low < 2 && fit.Ceiling.Value > 2);
        Assert.NotNull(fit.Doubling!.Low);
        Assert.Null(fit.Doubling.High);
    }

    [Fact]
    public void Collapse_is_cut_after_the_highest_reading_and_counted()
    {
        double[] sizes = [50, 50, 56, 70, 88, 100, 108, 112, 114, 115, 112, 105, 98];
        var series = RiseSeries.Of(EveryTen[..13], sizes, isHeight: true);
        Assert.Equal((10, 3), (series.Sizes.Length, series.CollapsedCount));
        Assert.Contains("3 readings after it were cut off", Answer(EveryTen[..13], sizes).Caveats[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(109, 0)] // a tenth of the rise of 65 is 6.5: 115 - 6.5 = 108.5
    [InlineData(108, 1)]
    public void Fall_of_more_than_a_tenth_of_the_rise_is_a_collapse(double last, int cut) => Assert.Equal(
        cut, RiseSeries.Of([0, 10, 20, 30], [50, 80, 115, last], isHeight: true).CollapsedCount);

    [Fact]
    public void Dough_that_comes_back_after_a_fold_has_not_collapsed() => Assert.Equal(
        0, RiseSeries.Of([0, 10, 20, 30, 40], [50, 80, 60, 75, 79], isHeight: true).CollapsedCount);

    [Fact]
    public void Readings_in_another_unit_or_order_give_the_same_curve()
    {
        var heights = Heights(new GompertzRise(1.6, 0.025, 20));
        var (mm, other) = (Answer(EveryTen, heights), Answer([.. EveryTen.Reverse()], [.. heights.Reverse().Select(h => 1000 * h)]));
        Assert.Equal(mm.Chosen.Doubling!.Value, other.Chosen.Doubling!.Value, 1e-6);
        Assert.Equal(mm.Chosen.Ceiling.High!.Value, other.Chosen.Ceiling.High!.Value, 1e-6);
        Assert.Equal(mm.AiccDifference!.Value, other.AiccDifference!.Value, 1e-6);
    }

    [Fact]
    public void Journal_gives_an_attempt_for_each_bake_and_stage_by_the_size_that_more_readings_have()
    {
        var journal = Csv.ReadFolder(
        [
            ("bakes.csv", ["bake_id,baked_on", "a,2026-10-01"]),
            ("rise.csv", ["bake_id,stage,minutes,height_mm,volume_ml", "a,rise,0,50,", "a,rise,10,52,600", "a,rise,20,,700", "a,rise,30,60,", "a,,0,50,", "a,proof,0,,500"]),
        ]);
        var attempts = RiseCurves.Of(journal);
        Assert.Equal([("a", RiseStage.Rise), ("a", null), ("a", RiseStage.Proof)], attempts.Select(a => (a.BakeId, a.Stage)));
        Assert.All(attempts, a => Assert.False(a.Outcome.Succeeded));
        var series = RiseSeries.Of([.. journal.RiseReadings.Where(r => r.Stage == RiseStage.Rise)]);
        Assert.Equal((true, 3, 1), (series.IsHeight, series.Sizes.Length, series.UnsizedCount));
    }

    [Fact]
    public void Sizes_that_cannot_be_are_a_programming_error()
    {
        Assert.Throws<ArgumentException>(() => RiseSeries.Of([0, 1], [50], isHeight: true));
        Assert.Throws<ArgumentException>(() => RiseSeries.Of([0, 1], [50, 0], isHeight: true));
        Assert.Throws<ArgumentException>(() => RiseSeries.Of([0, double.NaN], [50, 50], isHeight: true));
    }

    [Fact]
    public void Whatever_the_readings_an_answer_has_finite_numbers_and_a_problem_has_words() =>
        Gen.Double[1, 200].Array[7, 14].Sample(
            sizes =>
            {
                var attempt = RiseCurves.Fit(RiseSeries.Of(EveryTen[..sizes.Length], sizes, isHeight: false));
                return attempt.Match(
                    answer => Finite(answer.Chosen) && answer.Other.Match(Finite, _ => true),
                    problem => problem.Message.Length > 0 && problem.Remedy.Length > 0);
            },
            iter: 40);

    private static bool Finite(RiseCurveFit fit) =>
        new[] { fit.Lag, fit.Steepest, fit.Ceiling, fit.Doubling }.OfType<Estimate>()
            .All(e => double.IsFinite(e.Value) && double.IsFinite(e.Low ?? 0) && double.IsFinite(e.High ?? 0)
                && !(e.Low > e.Value) && !(e.High < e.Value))
        && double.IsFinite(fit.Aicc) && double.IsFinite(fit.Scatter) && (fit.Doubling is null) != (fit.NoDoubling is null);

    private static double[] Heights(RiseCurve curve) =>
        [.. EveryTen.Zip(Errors, (minute, error) => (50 * (1 + curve.Rise(minute))) + error)];

    private static RiseCurveAnswer Answer(double[] minutes, double[] heights) =>
        RiseCurves.Fit(RiseSeries.Of(minutes, heights, isHeight: true)).Value;

    private static FitProblem Problem(double[] minutes, double[] heights)
    {
        Assert.False(RiseCurves.Fit(RiseSeries.Of(minutes, heights, isHeight: true)).TryGet(out _, out var problem));
        return problem!;
    }
}
