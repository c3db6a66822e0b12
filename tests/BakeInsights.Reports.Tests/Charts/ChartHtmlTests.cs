using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Plotly.NET;
using Plotly.NET.CSharp;
using Xunit;
using Chart = Plotly.NET.CSharp.Chart;

namespace BakeInsights.Reports.Tests;

public class ChartHtmlTests
{
    [Fact]
    public void The_fragment_holds_the_figure_that_the_chart_describes()
    {
        var figure = Figure(ChartHtml.Fragment(Points("a")));
        Assert.Equal([22, 24.5], figure["data"]![0]!["x"]!.AsArray().Select(x => (double)x!));
        Assert.True((bool)figure["config"]!["responsive"]!);
        Assert.False((bool)figure["config"]!["displaylogo"]!);
    }

    [Fact]
    public void Text_in_a_chart_can_not_end_its_script()
    {
        var fragment = ChartHtml.Fragment(Points("</script><script>alert(1)</script><!--"));
        Assert.DoesNotContain("alert(1)</script", fragment, StringComparison.Ordinal);
        Assert.DoesNotContain("<!--", fragment, StringComparison.Ordinal);
        Assert.Equal("</script><script>alert(1)</script><!--", (string?)Figure(fragment)["data"]![0]!["name"]);
    }

    [Fact]
    public void The_width_is_the_pages_and_only_a_chosen_height_stays()
    {
        var usual = Figure(ChartHtml.Fragment(Points("a")))["layout"]!.AsObject();
        Assert.False(usual.ContainsKey("width"));
        Assert.False(usual.ContainsKey("height"));
        var tall = ChartHtml.Fragment(Points("a").WithSize(Width: 900, Height: 720));
        Assert.False(Figure(tall)["layout"]!.AsObject().ContainsKey("width"));
        Assert.Equal(720, (int?)Figure(tall)["layout"]!["height"]);
        Assert.Contains("height:720px", tall, StringComparison.Ordinal);
    }

    [Fact]
    public void Margins_are_narrow_unless_the_chart_sets_its_own()
    {
        Assert.True((int)Figure(ChartHtml.Fragment(Points("a")))["layout"]!["margin"]!["r"]! < 80);
        var margin = Plotly.NET.LayoutObjects.Margin.init<int, int, int, int, int, bool>(Left: 200, Right: null, Top: null, Bottom: null, Pad: null, Autoexpand: null);
        var own = Plotly.NET.Chart.withMargin(margin).Invoke(Points("a"));
        Assert.Equal(200, (int?)Figure(ChartHtml.Fragment(own))["layout"]!["margin"]!["l"]);
    }

    [Fact]
    public void A_reader_of_plain_text_gets_the_title()
    {
        var titled = Plotly.NET.Chart.withTitle("Rise &amp; <b>shine</b>", null).Invoke(Points("a"));
        Assert.Equal("Chart: Rise & shine", Regex.Replace(ChartHtml.PlainText(titled), " +", " "));
        Assert.Contains("aria-label=\"Chart: Rise &amp;", ChartHtml.Fragment(titled), StringComparison.Ordinal);
        Assert.Equal("Chart", ChartHtml.PlainText(Points("a")));
    }

    [Fact]
    public void The_same_chart_gives_the_same_text() =>
        Assert.Equal(ChartHtml.Fragment(Points("a")), ChartHtml.Fragment(Points("a")));

    [Fact]
    public void The_library_script_is_one_element_and_hides_from_module_loaders()
    {
        Assert.Single(Regex.Matches(PlotlyScript.Element, "</?script", RegexOptions.IgnoreCase).Skip(1));
        Assert.Contains("function (define, module, exports)", PlotlyScript.Text, StringComparison.Ordinal);
    }

    private static GenericChart Points(string name) => Chart.Point<double, double, string>([22, 24.5], [100, 90], Name: name);

    private static JsonNode Figure(string fragment) => JsonNode.Parse(
        Regex.Match(fragment, "<script type=\"application/json\">(.*?)</script>", RegexOptions.Singleline).Groups[1].Value)!;
}
