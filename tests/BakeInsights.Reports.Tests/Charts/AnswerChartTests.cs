using System.Net;
using System.Text.Json.Nodes;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class AnswerChartTests
{
    // Okabe and Ito (2008), "Color Universal Design".
    private static readonly string[] OkabeIto =
        ["#000000", "#E69F00", "#56B4E9", "#009E73", "#F0E442", "#0072B2", "#D55E00", "#CC79A7"];

    private static readonly RiseTimeAnswer Rise = Demo.RiseTime.Value;
    private static readonly LoafVolumeAnswer Volume = Demo.LoafVolume.Value;

    [Theory]
    [InlineData(UnitSystem.Metric, "Dough temperature (°C)", "1 °C warmer: about 9 min sooner (8 to 11; 95 % interval, 40 bakes). A stroke lies between two looks")]
    [InlineData(UnitSystem.Us, "Dough temperature (°F)", "1 °F warmer: about 5 min sooner (4 to 6; 95 % interval, 40 bakes). A stroke lies between two looks")]
    public void Rise_time_has_two_bands_a_curve_and_the_bakes(UnitSystem units, string axis, string title)
    {
        var figure = Figure(RiseTimeChart.AgainstDoughTemperature(Rise, units)!);
        Assert.Equal(
            ["one more bake (95 %), dotted edge", "mean of many (95 %), solid edge", "fitted", "bake, moved to the typical dough"], Traces(figure).Select(Name));
        Assert.Equal(axis, Title(figure, "xaxis"));
        Assert.Equal("Rise time (min)", Title(figure, "yaxis"));
        Assert.Equal(title, (string?)figure["layout"]!["title"]!["text"]);
        var points = Traces(figure)[3];
        Assert.Equal(Rise.Used.Select(bake => InUnits(bake[BakeColumns.DoughTemp]!.Value, units)), Numbers(points, "x"));
        Assert.Equal(Rise.MinutesAsTypical(), Numbers(points, "y"));
    }

    [Fact]
    public void The_band_of_the_mean_encloses_the_curve_and_that_of_one_more_bake_encloses_both()
    {
        var traces = Traces(Figure(RiseTimeChart.AgainstDoughTemperature(Rise, UnitSystem.Metric)!));
        var curve = Numbers(traces[2], "y");
        var (single, mean) = (Numbers(traces[0], "y"), Numbers(traces[1], "y"));
        var x = Numbers(traces[2], "x");
        Assert.Equal([.. x, .. x.Reverse()], Numbers(traces[0], "x"));
        Assert.Equal(Numbers(traces[0], "x"), Numbers(traces[1], "x"));
        for (var i = 0; i < curve.Length; i++)
        {
            Assert.True(single[i] < mean[i] && mean[i] < curve[i]);
            Assert.True(curve[i] < mean[^(i + 1)] && mean[^(i + 1)] < single[^(i + 1)]);
        }

        var celsius = Rise.Used.Select(bake => bake[BakeColumns.DoughTemp]!.Value).ToList();
        Assert.Equal((celsius.Min(), celsius.Max()), (x[0], Math.Round(x[^1], 9)));
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "Specific volume (mL/g)", 1)]
    [InlineData(UnitSystem.Us, "Specific volume (cu in/oz)", 28.349523125 / 16.387064)]
    public void Volume_has_three_curves_and_every_bake_once(UnitSystem units, string axis, double factor)
    {
        var figure = Figure(LoafVolumeChart.AgainstHydration(Volume, units)!);
        Assert.Equal("Hydration (%)", Title(figure, "xaxis"));
        Assert.Equal(axis, Title(figure, "yaxis"));
        Assert.Equal(units == UnitSystem.Metric
            ? "Largest loaves at 24.0 °C near 70 % hydration (69 to 72; 95 % interval, 40 bakes)"
            : "Largest loaves at 75 °F near 70 % hydration (69 to 72; 95 % interval, 40 bakes)", (string?)figure["layout"]!["title"]!["text"]);
        Assert.Equal(["lines", "markers", "lines", "markers", "lines", "markers"], Traces(figure).Select(trace => (string?)trace["mode"]));
        var points = Traces(figure).Where(trace => (string?)trace["mode"] == "markers").ToList();
        Assert.Equal(
            Volume.Used.Select(bake => Math.Round(factor * Measures.SpecificVolume.Of(bake)!.Value, 9)).Order(),
            points.SelectMany(trace => Numbers(trace, "y")).Select(y => Math.Round(y, 9)).Order());
        Assert.Equal(Volume.Used.Select(bake => bake.Id).Order(), points.SelectMany(Hovers).Select(words => words.Split(',')[0]).Order());
    }

    [Fact]
    public void Expected_against_logged_shows_every_bake_and_the_line_of_equals()
    {
        var figure = Figure(ObservedAgainstPredicted.Of(Rise, UnitSystem.Metric));
        Assert.Equal("Rise time expected (min)", Title(figure, "xaxis"));
        Assert.Equal("Rise time logged (min)", Title(figure, "yaxis"));
        Assert.Equal(["as expected", "bake"], Traces(figure).Select(Name));
        Assert.Equal(Numbers(Traces(figure)[0], "x"), Numbers(Traces(figure)[0], "y"));
        Assert.Equal(Rise.Expected, Numbers(Traces(figure)[1], "x"));
        Assert.Equal(
            Rise.Used.Select(bake => (bake[BakeColumns.Rise]!.Value + (bake[BakeColumns.RiseNotReady] ?? bake[BakeColumns.Rise]!.Value)) / 2),
            Numbers(Traces(figure)[1], "y"));
        Assert.StartsWith("ML-01, 2026-10-01<br>Rise time: 165 min<br>Expected: ", Hovers(Traces(figure)[1])[0], StringComparison.Ordinal);
        Assert.Equal("Specific volume expected (cu in/oz)", Title(Figure(ObservedAgainstPredicted.Of(Volume, UnitSystem.Us)), "xaxis"));
    }

    [Fact]
    public void Series_are_told_apart_by_documented_colours_and_by_marker()
    {
        GenericChart[] charts =
        [
            RiseTimeChart.AgainstDoughTemperature(Rise, UnitSystem.Metric)!, LoafVolumeChart.AgainstHydration(Volume, UnitSystem.Metric)!,
            ObservedAgainstPredicted.Of(Rise, UnitSystem.Metric), MonthTimeline.Of(Demo.Journal.Bakes, UnitSystem.Metric),
        ];
        foreach (var chart in charts)
        {
            var markers = Traces(Figure(chart)).Where(trace => (string?)trace["mode"] == "markers").Select(trace => trace["marker"]!).ToList();
            Assert.All(markers, marker => Assert.Contains((string)marker["color"]!, OkabeIto));
            Assert.Equal(markers.Count, markers.Select(marker => (string)marker["symbol"]!).Distinct().Count());
            Assert.Equal(markers.Count, markers.Select(marker => (string)marker["color"]!).Distinct().Count());
        }
    }

    [Fact]
    public void Words_beside_the_pointer_are_the_bakes_own_and_encoded()
    {
        var journal = Demo.Changed(line => line.Replace("ML-01,", "<img src=x>&,", StringComparison.Ordinal));
        var points = Traces(Figure(RiseTimeChart.AgainstDoughTemperature(RiseTime.Ask(journal.Bakes).Value, UnitSystem.Us)!))[3];
        Assert.StartsWith("&lt;img src=x&gt;&amp;, 2026-10-01<br>", Hovers(points)[0], StringComparison.Ordinal);
        Assert.Equal(
            "ML-03, 2026-10-02<br>Dough temperature: 72 °F<br>Rise time: 90 min<br>Hydration: 66.0 %<br>Yeast (as instant): 1.2 %",
            WebUtility.HtmlDecode(Hovers(points)[2]));
    }

    [Fact]
    public void A_chart_that_the_answer_can_not_bear_is_null()
    {
        var cold = Demo.Changed(line => line.Replace("dough_temp_c", "own_column", StringComparison.Ordinal));
        Assert.Null(RiseTimeChart.AgainstDoughTemperature(RiseTime.Ask(cold.Bakes).Value, UnitSystem.Metric));
        Assert.Null(LoafVolumeChart.AgainstHydration(LoafVolume.Ask(cold.Bakes).Value, UnitSystem.Metric));
        var dry = Demo.Changed(line => line.Replace("water_g", "own_column", StringComparison.Ordinal));
        Assert.Null(LoafVolumeChart.AgainstHydration(LoafVolume.Ask(dry.Bakes).Value, UnitSystem.Metric));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Charts_are_the_same_bytes_in_every_culture(string culture)
    {
        static string All() => string.Concat(
            GenericChart.toFigureJson(RiseTimeChart.AgainstDoughTemperature(Rise, UnitSystem.Us)!),
            GenericChart.toFigureJson(LoafVolumeChart.AgainstHydration(Volume, UnitSystem.Us)!),
            ChartHtml.Fragment(MonthTimeline.Of(Demo.Journal.Bakes, UnitSystem.Us)));
        Assert.Equal(Demo.Under("en-US", All), Demo.Under(culture, All));
    }

    [Fact]
    public void The_month_shows_each_logged_value_and_the_stroke_between_two_looks()
    {
        var bakes = Demo.Journal.Bakes;
        var figure = Figure(MonthTimeline.Of(bakes, UnitSystem.Us));
        var (temperature, rise) = (Traces(figure)[0], Traces(figure)[1]);
        var warm = bakes.Where(bake => bake[BakeColumns.DoughTemp] is not null).ToList();
        var risen = bakes.Where(bake => bake[BakeColumns.Rise] is not null).ToList();
        Assert.Equal("Dough temperature (°F)", Title(figure, "yaxis"));
        Assert.Equal("Rise time (min)", Title(figure, "yaxis2"));
        Assert.Equal("Day", Title(figure, "xaxis"));
        Assert.Equal(warm.Select(bake => InUnits(bake[BakeColumns.DoughTemp]!.Value, UnitSystem.Us)), Numbers(temperature, "y"));
        Assert.Equal(risen.Select(bake => bake[BakeColumns.Rise]!.Value), Numbers(rise, "y"));
        Assert.Equal(risen.Select(bake => bake.BakedOn.ToString("o")), rise["x"]!.AsArray().Select(x => (string)x!));
        Assert.Equal("y2", (string?)rise["yaxis"]);

        var spans = rise["error_y"]!;
        Assert.False((bool)spans["symmetric"]!);
        Assert.All(spans["array"]!.AsArray(), above => Assert.Equal(0, (double)above!));
        Assert.Equal(
            risen.Select(bake => bake[BakeColumns.RiseNotReady] is { } notReady ? bake[BakeColumns.Rise]!.Value - notReady : 0),
            spans["arrayminus"]!.AsArray().Select(below => (double)below!));

        // The hand looks every ten minutes, or sits by the dough.
        Assert.Equal([0.0, 10.0], spans["arrayminus"]!.AsArray().Select(below => (double)below!).Distinct().Order());
    }

    private static double InUnits(double celsius, UnitSystem units) => units == UnitSystem.Us ? (celsius * 1.8) + 32 : celsius;

    private static JsonNode Figure(GenericChart chart) => JsonNode.Parse(GenericChart.toFigureJson(chart))!;

    private static List<JsonNode> Traces(JsonNode figure) => [.. figure["data"]!.AsArray().Select(trace => trace!)];

    private static string? Name(JsonNode trace) => (string?)trace["name"];

    private static string? Title(JsonNode figure, string axis) => (string?)figure["layout"]![axis]!["title"]!["text"];

    private static double[] Numbers(JsonNode trace, string axis) => [.. trace[axis]!.AsArray().Select(value => (double)value!)];

    private static List<string> Hovers(JsonNode trace) => [.. trace["text"]!.AsArray().Select(words => (string)words!)];
}
