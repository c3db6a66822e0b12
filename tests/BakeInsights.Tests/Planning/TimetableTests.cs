using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The clock times of a day, worked by hand.</summary>
public class TimetableTests
{
    private static readonly BakingDay Day = new(new Duration(90, 70, 115), new Duration(45, 35, 60), Duration.Exactly(36));

    [Fact]
    public void A_day_from_its_start_has_every_step_at_its_time()
    {
        // 8:00 is minute 480. Usual: weigh 15, mix 12, rise 90, divide 10, shape 10, proof 45, bake 36, cool 60.
        var table = Timetable.From(Day, new TimeOnly(8, 0));
        Assert.Equal(
            [
                ("Weigh, take temperatures", 480), ("Mix", 495), ("First rise begins", 507), ("Switch the oven on", 593), ("Divide", 597),
                ("Shape", 607), ("Proof begins", 617), ("Load the oven", 662), ("Out of the oven", 698), ("Cut", 758),
            ],
            table.Rows.Select(row => (row.What, (int)Math.Round(row.UsualMin))));

        // By hand: sooner sides 5, 4, 20, 5, 5, 10 until loading, so 662 - root of 591 = 637.7, less 45 for the oven.
        Assert.Equal(637.69 - 45, table.Rows[3].UsualMin, 0.01);

        // Later sides 5, 6, 25, 5, 5, 15, 0, 0: 758 + root of 961 = 789.
        Assert.Equal(789, table.Finish.LatestMin, 1e-9);

        // Ready from 70 to 115 min after mixing: looks from one gap before, 60, to 120.
        Assert.Equal([567, 577, 587, 597, 607, 617, 627], table.LooksMin);

        // All late at once: 480 + 20 + 18 + 115 + 15 + 15 + 60 + 36 + 60.
        Assert.Equal(819, table.AllLateMin, 1e-9);
    }

    [Fact]
    public void A_day_to_a_finish_is_done_by_then_even_when_late()
    {
        var table = Timetable.ToFinish(Day, new TimeOnly(13, 0));
        Assert.Equal(780, table.Finish.LatestMin, 1e-9);
        Assert.Equal(471, table.StartMin, 1e-9);
    }

    [Fact]
    public void A_day_that_does_not_fit_says_by_how_much_and_which_rise_would()
    {
        var fit = Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(8, 0), new TimeOnly(12, 30));
        Assert.False(fit.Fits);
        Assert.Equal(39, fit.OverMin, 1e-9);

        // The spread shrinks with the rise r: 480 + 188 + r + root of (336 + (25 r / 90)^2) = 750, so r = 57.66.
        Assert.Equal(57.66, fit.RiseThatFitsMin!.Value, 0.01);
        Assert.Equal(new TimetableFit(0, null), Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(7, 30), new TimeOnly(14, 0)));
        Assert.Null(Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(8, 0), new TimeOnly(10, 0)).RiseThatFitsMin);
    }

    [Fact]
    public void Day_that_starts_too_early_keeps_its_rise_when_a_later_start_is_enough() => Assert.Equal(
        new TimetableFit(60, 90), Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(9, 0), new TimeOnly(15, 0)));

    [Fact]
    public void The_rise_that_fits_fits_to_the_minute() =>
        Gen.Select(Gen.Double[20, 300], Gen.Double[0, 0.5], Gen.Double[0, 1], Gen.Int[1, 200]).Sample((usual, sooner, later, short_) =>
        {
            var day = Day with { FirstRise = new Duration(usual, usual * (1 - sooner), usual * (1 + later)) };
            var table = Timetable.From(day, new TimeOnly(1, 0));
            var closes = TimeOnly.MinValue.AddMinutes(table.Finish.LatestMin - short_);
            var fit = table.Within(new TimeOnly(1, 0), closes);
            Assert.Equal(short_, fit.OverMin, 1e-3);
            if (fit.RiseThatFitsMin is { } rise)
            {
                var mended = Timetable.From(day with { FirstRise = day.FirstRise.Times(rise / usual) }, new TimeOnly(1, 0));
                Assert.Equal(closes.ToTimeSpan().TotalMinutes, mended.Finish.LatestMin, 1e-3);
            }
        });

    [Fact]
    public void Spreads_of_steps_add_as_roots_of_squares_in_any_order() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 100], Gen.Double[0, 100]).Select(Made).Array[3].Sample(parts =>
        {
            var (one, other) = ((parts[0] + parts[1]) + parts[2], parts[0] + (parts[1] + parts[2]));
            Assert.Equal(one.LatestMin, other.LatestMin, 1e-6);
            Assert.Equal(one.SoonestMin, other.SoonestMin, 1e-6);
            Assert.True(one.LatestMin - one.UsualMin <= parts.Sum(part => part.LatestMin - part.UsualMin) + 1e-9);
        });

    private static Duration Made((double Soonest, double Usual, double Latest) drawn) => new(
        drawn.Soonest + drawn.Usual, drawn.Soonest, drawn.Soonest + drawn.Usual + drawn.Latest);
}
