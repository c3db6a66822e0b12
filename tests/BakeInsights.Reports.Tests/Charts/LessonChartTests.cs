using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class LessonChartTests
{
    [Fact]
    public void Marks_intervals_and_lines_are_told_in_words()
    {
        var chart = LessonChart.Of(
            "Two bakes",
            "Dough temperature (°C)",
            "Rise time (min)",
            LessonSeries.Line("line", [22, 26], [110, 90]),
            LessonSeries.Marks("bake", [23, 25], [104, 97]),
            LessonSeries.Intervals("range", [24], [100], [new Interval(95, 105)]));
        var words = ChartHtml.Fragment(chart);
        Assert.Contains("Two bakes", words, StringComparison.Ordinal);
        Assert.Contains("line, a line", words, StringComparison.Ordinal);
        Assert.Contains("bake, 2 marks", words, StringComparison.Ordinal);
        Assert.Contains("range, 1 mark", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_of_different_length_are_refused()
    {
        Assert.Throws<ArgumentException>(() => LessonSeries.Marks("bake", [1, 2], [1]));
        Assert.Throws<ArgumentException>(() => LessonSeries.Intervals("range", [1, 2], [1, 2], [new Interval(0, 1)]));
    }
}
