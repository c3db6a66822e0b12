using System.Text.RegularExpressions;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class ChartWordsTests
{
    [Fact]
    public void Axes_spans_and_series_are_said_in_words()
    {
        var words = Words(RiseTimeChart.AgainstDoughTemperature(Demo.RiseTime.Value!, UnitSystem.Metric)!);
        Assert.StartsWith("Across: Dough temperature (°C), 19.2 to 27.3. Up: Rise time (min), ", words, StringComparison.Ordinal);
        Assert.EndsWith(
            "Drawn: one more bake (95 %), dotted edge, a band; mean of many (95 %), solid edge, a band; fitted, a line; bake, moved to the typical dough, 40 marks.",
            words, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_axes_are_told_apart() => Assert.Matches(
        @"^Across: Day, 2026-10-01 to 2026-10-31\. Up: Dough temperature \(°C\), 19\.2 to 27\.3; Rise time \(min\), 59 to 191\.",
        Words(MonthTimeline.Of(Demo.Journal.Bakes, UnitSystem.Metric)));

    [Fact]
    public void Each_drawn_value_is_in_a_table()
    {
        var fragment = ChartHtml.Fragment(RiseTimeChart.AgainstDoughTemperature(Demo.RiseTime.Value!, UnitSystem.Metric)!);
        var tables = Regex.Matches(fragment, "<table>.*?</table>", RegexOptions.Singleline).Select(table => table.Value).ToList();
        Assert.Equal(2, tables.Count);
        Assert.Equal(1 + 60, Rows(tables[0]));
        Assert.Equal(6, Regex.Matches(tables[0].Split("</tr>")[0], "<th ").Count);
        Assert.Equal(1 + Demo.RiseTime.Value!.UsedCount, Rows(tables[1]));
        Assert.Contains(">ML-01, 2026-10-01<", tables[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_ends_of_an_interval_are_in_the_table()
    {
        var journal = Demo.Read("bake_id,baked_on,dough_temp_c,rise_min,rise_not_ready_min", "A,2026-10-01,24,90,80");
        var fragment = ChartHtml.Fragment(MonthTimeline.Of(journal.Bakes, UnitSystem.Metric));
        Assert.Matches(@">90</td><td[^>]*>80</td><td[^>]*>90</td></tr>", fragment);
    }

    [Theory]
    [InlineData(12345.6, "12346")]
    [InlineData(-0.01234567, "−0.01235")]
    [InlineData(25.0, "25")]
    [InlineData(0.0, "0")]
    [InlineData(3.14159, "3.142")]
    public void A_value_has_the_digits_that_count(double value, string expected) => Assert.Equal(expected, ChartWords.Value(value));

    [Fact]
    public void Text_of_a_journal_is_text_in_words_tables_and_title()
    {
        const string hostile = "<img src=x onerror=alert(1)>&lt;b&gt;";
        var chart = ChartFrame.Around(
            Traces.Words(hostile), Traces.Words(hostile), "y",
            Traces.Points(Traces.Words(hostile), [1.0, Traces.Words(hostile)], [1, 2], [Traces.Words(hostile), "b"], Palette.Series[0]));
        var fragment = ChartHtml.Fragment(chart);
        var shown = Regex.Replace(fragment, "<script.*?</script>", "", RegexOptions.Singleline);
        Assert.DoesNotContain("<img", shown, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;img src=x onerror=alert(1)&gt;&amp;lt;b&amp;gt;</figcaption>", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_that_is_no_plane_says_so() => Assert.Contains(
        "no values across and up", ChartHtml.Fragment(Plotly.NET.CSharp.Chart.Pie<int, string, string>([1, 2])), StringComparison.Ordinal);

    private static string Words(GenericChart chart) =>
        System.Net.WebUtility.HtmlDecode(Regex.Match(ChartHtml.Fragment(chart), "</summary>\n<div class=\"bake-view\">\n<p>(.*?)</p>").Groups[1].Value);

    private static int Rows(string table) => Regex.Matches(table, "<tr>").Count;
}
