using System.Text;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Minutes between two times of day: over midnight, and over nights in which the clocks were changed.</summary>
public class ClockSpanTests
{
    // One hour ahead in summer: forward at 2:00 on 29 March 2026, back at 3:00 on 25 October.
    internal static readonly TimeZoneInfo Zone = TimeZoneInfo.CreateCustomTimeZone(
        "Test", TimeSpan.FromHours(1), "Test", "Test winter", "Test summer",
        [
            TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(
                new DateTime(2026, 1, 1), new DateTime(2026, 12, 31), TimeSpan.FromHours(1),
                TimeZoneInfo.TransitionTime.CreateFixedDateRule(new DateTime(1, 1, 1, 2, 0, 0), 3, 29),
                TimeZoneInfo.TransitionTime.CreateFixedDateRule(new DateTime(1, 1, 1, 3, 0, 0), 10, 25)),
        ]);

    [Theory]
    [InlineData("2026-10-01", "8:00", "9:30", 90)]
    [InlineData("2026-10-01", "23:00", "1:10", 130)]
    [InlineData("2026-10-01", "12:00", "11:59", 1439)]
    [InlineData("2026-03-28", "23:00", "6:00", 360)]
    [InlineData("2026-03-29", "1:00", "4:00", 120)]
    [InlineData("2026-10-24", "23:00", "6:00", 480)]
    [InlineData("2026-10-25", "1:00", "4:00", 240)]
    [InlineData("2026-03-29", "4:00", "6:00", 120)]
    [InlineData("9999-12-31", "23:00", "1:00", 120)]
    public void Rise_is_the_time_that_went_by(string day, string mixed, string ready, double minutes) =>
        Assert.Equal(minutes, Read("mixed_at,ready_at", day, $"{mixed},{ready}").Bakes.Single()[BakeColumns.Rise]);

    [Theory]
    [InlineData("2026-10-24", "23:00", "6:00", 420)]
    [InlineData("2026-10-25", "1:00", "2:30", 90)]
    public void Without_a_zone_the_clocks_are_never_changed(string day, string mixed, string ready, double minutes) => Assert.Equal(
        minutes, Csv.Bake("baked_on,mixed_at,ready_at", $"{day},{mixed},{ready}")[BakeColumns.Rise]);

    [Theory]
    [InlineData("2026-03-29", "1:00,2:30", "01:00 to 02:30")]
    [InlineData("2026-10-24", "23:00,2:30", "23:00 to 02:30")]
    public void Time_that_the_clocks_showed_twice_or_never_gives_no_span(string day, string times, string text)
    {
        var journal = Read("mixed_at,ready_at", day, times);

        Assert.Null(journal.Bakes.Single()[BakeColumns.Rise]);
        Assert.Equal(("CLOCK_CHANGED", text), (journal.Notices.Single().Code, journal.Notices.Single().Text));
    }

    // Mixed in the evening of the 28th, the oven stands on the 29th, after the change.
    [Fact]
    public void Time_earlier_than_the_one_before_it_is_on_the_next_day()
    {
        var bake = Read("mixed_at,ready_at,loaded_at,out_at", "2026-03-28", "20:00,23:30,1:30,3:10").Bakes.Single();

        Assert.Equal((210, 40), (bake[BakeColumns.Rise], bake[BakeColumns.Baking]));
    }

    [Fact]
    public void Minutes_that_were_written_stay()
    {
        var journal = Csv.Read("baked_on,mixed_at,ready_at,rise_min", "2026-10-01,8:00,9:30,80");

        Assert.Equal(80, journal.Bakes.Single()[BakeColumns.Rise]);
        Assert.Empty(journal.Notices);
    }

    [Theory]
    [InlineData("8:00,")]
    [InlineData(",9:30")]
    [InlineData("8:00,late")]
    public void Of_one_time_alone_there_is_no_span(string times) =>
        Assert.Null(Csv.Bake("baked_on,mixed_at,ready_at", $"2026-10-01,{times}")[BakeColumns.Rise]);

    [Fact]
    public void Span_on_a_day_without_a_change_is_the_same_in_any_zone() =>
        Gen.Select(Gen.Int[0, 1439], Gen.Int[1, 1439]).Sample((start, span) =>
        {
            var row = $"{ClockText.Of(start)},{ClockText.Of((start + span) % 1440)}";
            return Read("mixed_at,ready_at", "2026-06-01", row).Bakes.Single()[BakeColumns.Rise] == span;
        }, iter: 200);

    private static Journal Read(string columns, string day, string cells) =>
        Csv.ReadBytes(Encoding.UTF8.GetBytes($"baked_on,{columns}\n{day},{cells}\n"), Zone);
}
