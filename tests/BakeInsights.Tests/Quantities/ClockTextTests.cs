using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class ClockTextTests
{
    private const int MinutesInDay = 1_440;

    [Theory]
    [InlineData("19:40", 1180)]
    [InlineData("7:05", 425)]
    [InlineData("7:40 pm", 1180)]
    [InlineData("7:40PM", 1180)]
    [InlineData("7:40 p.m.", 1180)]
    [InlineData("7 pm", 1140)]
    [InlineData("7pm", 1140)]
    [InlineData("7\u00A0am", 420)]
    [InlineData("12 am", 0)]
    [InlineData("12:30 am", 30)]
    [InlineData("12 pm", 720)]
    [InlineData("12:30 pm", 750)]
    [InlineData("11:59:30 pm", 1439.5)]
    public void Time_of_day_is_read_on_either_clock(string text, double minutes)
    {
        Assert.True(ClockText.TryTimeOfDay(text, out var read));

        Assert.Equal(minutes, read, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("pm")]
    [InlineData("7")]
    [InlineData("0 pm")]
    [InlineData("13 pm")]
    [InlineData("19:40 pm")]
    [InlineData("24:00")]
    [InlineData("7:5")]
    [InlineData("7:60 pm")]
    [InlineData("7.40")]
    [InlineData("1 h")]
    public void Anything_else_is_no_time_of_day(string text) => Assert.False(ClockText.TryTimeOfDay(text, out _));

    [Fact]
    public void Every_minute_of_the_day_is_the_same_on_both_clocks() =>
        Gen.Select(Gen.Int[0, MinutesInDay - 1], Gen.Bool, Gen.Bool).Sample((minute, hasBlank, isCapital) =>
        {
            var (hour, rest) = Math.DivRem(minute, 60);
            var half = (hasBlank ? " " : "") + (hour < 12 ? "am" : "pm");
            var text = $"{(hour + 11) % 12 + 1}:{rest:00}{(isCapital ? half.ToUpperInvariant() : half)}";
            return ClockText.TryTimeOfDay(text, out var read) && read == minute
                && ClockText.TryTimeOfDay($"{hour}:{rest:00}", out var plain) && plain == minute;
        });
}
