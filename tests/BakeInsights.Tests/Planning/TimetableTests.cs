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
        Assert.Equal([574, 584, 594, 604, 614, 624], table.LooksMin);
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
        Assert.Equal(51, fit.RiseThatFitsMin!.Value, 1e-9);
        Assert.Equal(new TimetableFit(0, null), Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(7, 30), new TimeOnly(14, 0)));
        Assert.Null(Timetable.From(Day, new TimeOnly(8, 0)).Within(new TimeOnly(8, 0), new TimeOnly(10, 0)).RiseThatFitsMin);
    }

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
