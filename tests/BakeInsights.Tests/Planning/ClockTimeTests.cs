using Xunit;

namespace BakeInsights.Tests;

public class ClockTimeTests
{
    [Theory]
    [InlineData(0, "0:00", "12:00 am")]
    [InlineData(545.4, "9:05", "9:05 am")]
    [InlineData(719.5, "12:00", "12:00 pm")]
    [InlineData(785, "13:05", "1:05 pm")]
    [InlineData(-20, "23:40 the day before", "11:40 pm the day before")]
    [InlineData(1460, "0:20 the day after", "12:20 am the day after")]
    [InlineData(-2000, "14:40, 2 days before", "2:40 pm, 2 days before")]
    [InlineData(3000, "2:00, 2 days after", "2:00 am, 2 days after")]
    public void Minutes_are_read_as_a_clock(double minutes, string metric, string us)
    {
        Assert.Equal(metric, ClockTime.Text(minutes, UnitSystem.Metric));
        Assert.Equal(us, ClockTime.Text(minutes, UnitSystem.Us));
    }

    [Theory]
    [InlineData("13:00", 13, 0)]
    [InlineData("9:05 pm", 21, 5)]
    [InlineData("1 pm", 13, 0)]
    public void Both_clocks_are_read(string text, int hour, int minute)
    {
        Assert.True(ClockTime.TryParse(text, out var time));
        Assert.Equal(new TimeOnly(hour, minute), time);
        Assert.False(ClockTime.TryParse("noon", out _));
    }
}
