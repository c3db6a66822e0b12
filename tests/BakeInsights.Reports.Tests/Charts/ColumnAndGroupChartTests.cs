using System.Text.Json.Nodes;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class ColumnAndGroupChartTests
{
    [Theory]
    [InlineData(UnitSystem.Metric, 1)]
    [InlineData(UnitSystem.Us, 1 / 16.387064)]
    public void Levels_show_every_bake_and_each_mean_with_its_interval(UnitSystem units, double factor)
    {
        var answer = ColumnAndGroupViewTests.Column(ColumnForm.Levels).Value;
        var figure = Figure(ColumnChart.Of(answer, units));
        var (bakes, means) = (figure["data"]![0]!, figure["data"]![1]!);

        Assert.Equal(85, bakes["y"]!.AsArray().Count);
        Assert.Equal(["0", "1", "2", "3", "4"], means["x"]!.AsArray().Select(x => (string)x!));
        Assert.Equal(answer.Levels.Select(level => level.Mean.Value * factor), means["y"]!.AsArray().Select(y => (double)y!), (a, b) => Math.Abs(a - b) < 1e-9 * b);
        Assert.Equal((answer.Levels[0].Mean.High!.Value - answer.Levels[0].Mean.Value) * factor, (double)means["error_y"]!["array"]![0]!, 1e-9);
        Assert.Equal("category", (string?)figure["layout"]!["xaxis"]!["type"]);
    }

    [Fact]
    public void A_curve_shows_its_band_and_every_bake()
    {
        var figure = Figure(ColumnChart.Of(ColumnAndGroupViewTests.Column(ColumnForm.Curve).Value, UnitSystem.Metric));
        Assert.Equal(["mean of many (95 %), solid edge", "fitted", "bake, moved to the average of all else"], figure["data"]!.AsArray().Select(trace => (string)trace!["name"]!));
        Assert.Equal("Highest near bromate mg 2.0 (1.8 to 2.2)", (string?)figure["layout"]!["title"]!["text"]);
    }

    [Theory]
    [InlineData(5, "pooled, all else held still (95 %)")]
    [InlineData(2, "own mean, all else held still (95 %)")]
    public void Groups_show_bakes_plain_means_and_intervals_in_the_order_of_names(int groups, string last)
    {
        var answer = ColumnAndGroupViewTests.Groups(groups).Value;
        var figure = Figure(GroupChart.Of(answer, UnitSystem.Metric));
        Assert.Equal(["bake", "plain mean", last], figure["data"]!.AsArray().Select(trace => (string)trace!["name"]!));
        Assert.Equal(answer.Used.Count, figure["data"]![0]!["y"]!.AsArray().Count);
        Assert.Equal(answer.Groups.Select(group => group.Group), figure["layout"]!["xaxis"]!["categoryarray"]!.AsArray().Select(x => (string)x!));
    }

    private static JsonNode Figure(GenericChart chart) => JsonNode.Parse(GenericChart.toFigureJson(chart))!;
}
