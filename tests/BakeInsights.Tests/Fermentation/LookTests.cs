using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class LookTests
{
    [Fact]
    public void Ready_lies_after_the_last_early_look_and_by_the_first_that_is_not()
    {
        var ready = LookInterval.Ready(See(70, PressTest.KeepsDent), See(50, PressTest.SpringsBack), See(60, PressTest.SlowReturn));
        Assert.Equal((50, 60, false), (ready.AfterMin, ready.ByMin, ready.IsDoubted));
        var late = LookInterval.Reaching(PressTest.KeepsDent, See(50, PressTest.SpringsBack), See(60, PressTest.SlowReturn), See(70, PressTest.KeepsDent));
        Assert.Equal((60, 70, false), (late.AfterMin, late.ByMin, late.IsDoubted));
    }

    [Fact]
    public void Ready_at_the_first_look_lies_anywhere_before_it()
    {
        var ready = LookInterval.Ready(See(50, PressTest.SlowReturn));
        Assert.Equal((0, 50), (ready.AfterMin, ready.ByMin));
        Assert.True(ready.IsWide);
    }

    [Fact]
    public void Never_ready_has_no_upper_end()
    {
        var ready = LookInterval.Ready(See(50, PressTest.SpringsBack), See(60, PressTest.SpringsBack));
        Assert.Equal((60, null), (ready.AfterMin, ready.ByMin));
        Assert.True(ready.IsWide);
    }

    [Fact]
    public void Without_looks_nothing_is_known()
    {
        var ready = LookInterval.Ready();
        Assert.Equal((0, null, false), (ready.AfterMin, ready.ByMin, ready.IsDoubted));
    }

    [Fact]
    public void A_look_that_falls_back_is_doubted_and_widens_the_interval()
    {
        var ready = LookInterval.Ready(
            See(50, PressTest.SpringsBack),
            See(60, PressTest.SlowReturn),
            See(70, PressTest.SpringsBack),
            See(80, PressTest.KeepsDent));
        Assert.Equal((50, 80, true), (ready.AfterMin, ready.ByMin, ready.IsDoubted));
        Assert.Null(LookInterval.Ready(See(60, PressTest.SlowReturn), See(70, PressTest.SpringsBack)).ByMin);
    }

    // A dough that is truly ready at one minute, looked at whenever: the interval holds that minute.
    [Fact]
    public void The_interval_of_true_looks_holds_the_true_time() =>
        Gen.Select(Gen.Double[1, 200], Gen.Double[0, 240].Array[0, 12]).Sample((truth, minutes) =>
        {
            var looks = minutes.Select(minute => new Look(minute, minute < truth ? PressTest.SpringsBack : PressTest.SlowReturn));
            var ready = LookInterval.Ready([.. looks]);
            return ready.AfterMin < truth && (ready.ByMin is not { } by || truth <= by) && !ready.IsDoubted;
        });

    // 0.5 SD adds root(1 + 0.25 / 12) - 1 = 1.04 %, by hand.
    [Fact]
    public void Looks_half_a_standard_deviation_apart_add_one_percent() =>
        Assert.Equal(1.04, LookSpacing.SpreadAddedPct(LookSpacing.WidestInSd * 7, 7), 0.005);

    [Fact]
    public void The_widest_gap_costs_just_what_was_allowed() => Gen.Select(Gen.Double[0.5, 30], Gen.Double[0.1, 100]).Sample((sd, allowed) =>
        Math.Abs(LookSpacing.SpreadAddedPct(LookSpacing.WidestGap(sd, allowed), sd) - allowed) < 1e-9);

    [Fact]
    public void The_schedule_covers_a_quarter_to_both_sides_of_the_time_expected() => Gen.Double[5, 600].Sample(expected =>
    {
        var looks = LookSpacing.Schedule(expected);
        return looks[0] <= 0.75 * expected && looks[^1] >= 1.25 * expected && looks[^1] < (1.25 * expected) + 10;
    });

    [Fact]
    public void Looks_over_a_spread_begin_before_it_and_end_after_it_and_are_not_too_many() =>
        Gen.Select(Gen.Double[0, 600], Gen.Double[0, 800]).Sample((soonest, spread) =>
        {
            var looks = LookSpacing.Between(soonest, soonest + spread);
            return looks.Length <= LookSpacing.MostLooks
                && looks[0] <= soonest && looks[^1] >= soonest + spread && (looks.Length == 1 || looks[0] > soonest - (looks[1] - looks[0]) - 5)
                && looks.Zip(looks.Skip(1), (one, next) => next - one).All(gap => gap >= LookSpacing.UsualMin && gap % 5 == 0);
        });

    private static Look See(double minutes, PressTest outcome) => new(minutes, outcome);
}
