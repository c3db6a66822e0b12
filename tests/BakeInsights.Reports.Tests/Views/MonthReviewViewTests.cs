using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>The whole text of a small journal of two months, and its charts.</summary>
public class MonthReviewViewTests
{
    private const string Header =
        "bake_id,baked_on,flour_g,flour_measure,water_g,salt_g,yeast_g,yeast_kind,room_temp_c,flour_temp_c,water_temp_c,dough_temp_c,"
        + "rise_min,rise_not_ready_min,dough_g,loaf_count,loaf_g,loaf_volume_ml,crumb_score";

    // Doughs of a kilogram of flour: water, dough temperature, water temperature, rise, last look before, loaf, volume, crumb.
    private static readonly string[] September =
    [
        "640,23.0,27,112,100,736,2800,3", "660,24.1,28,101,,731,3010,4", "650,25.0,29,92,80,735,2960,4", "680,22.4,26,117,,738,3060,3",
        "670,23.6,28,104,95,733,3100,5", "655,24.8,29,95,,737,2990,4", "665,25.6,30,85,70,730,3050,4", "645,22.9,27,110,,734,2870,3",
        "675,24.4,28,96,90,736,3120,5", "660,23.9,28,100,,732,3000,4", "650,25.2,30,90,80,735,2940,3", "670,23.2,27,107,,739,3090,4",
    ];

    private static readonly string[] October =
    [
        "650,23.4,27,123,110,728,2930,3", "670,24.6,29,110,,727,3080,4", "640,25.4,30,106,,726,2810,3", "680,22.8,27,124,110,725,3040,4",
        "660,24.0,28,117,,724,3020,4", "665,25.1,29,103,90,722,3060,4", "655,23.1,27,126,,723,2950,3", "675,24.3,28,110,100,721,3110,5",
        "645,25.8,30,103,,719,2890,3", "670,23.7,28,116,100,720,3070,4", "660,34.0,38,52,,718,2870,2", "650,24.5,29,114,50,717,2960,",
    ];

    private static Journal Journal { get; } = Demo.Read(
    [
        Header,
        .. September.Select((row, place) => Row("S", 9, place, row)),
        .. October.Select((row, place) => Row("O", 10, place, row)),
    ]);

    [Theory]
    [InlineData(UnitSystem.Metric, "metric")]
    [InlineData(UnitSystem.Us, "us")]
    public void Text_says_findings_first_and_what_to_do_last(UnitSystem units, string name)
    {
        var text = MonthReviewView.Of(Review(), units).ToText();
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/month-{name}.txt", text);
    }

    [Fact]
    public void Text_of_a_first_month_says_what_it_can_not_compare() => Approved.Matches(
        "tests/BakeInsights.Reports.Tests/Approved/month-first.txt",
        MonthReviewView.Of(MonthReview.Of(Journal, "2026-09"), UnitSystem.Metric).ToText());

    [Fact]
    public void Text_is_the_same_in_a_culture_of_commas() => Assert.Equal(
        MonthReviewView.Of(Review(), UnitSystem.Metric).ToText(),
        Demo.Under("de-DE", () => MonthReviewView.Of(Review(), UnitSystem.Metric).ToText()));

    [Theory]
    [InlineData(UnitSystem.Metric, "Dough temperature (°C)", 34.0)]
    [InlineData(UnitSystem.Us, "Dough temperature (°F)", 93.2)]
    public void Control_chart_has_middle_limits_and_every_bake_once(UnitSystem units, string axis, double warmest)
    {
        var figure = Figure(MonthControlChart.Of(Review().DoughTemperatureChart.Value, units));
        Assert.Equal(axis, (string?)figure["layout"]!["yaxis"]!["title"]!["text"]);
        Assert.Equal(["middle", "limits", "", "bake", "look here"], Traces(figure).Select(trace => (string?)trace["name"]));
        var marked = Traces(figure).Skip(3).SelectMany(trace => trace["y"]!.AsArray().Select(y => (double)y!)).ToList();
        Assert.Equal(12, marked.Count);
        Assert.Equal(warmest, Math.Round(marked.Max(), 6));
        Assert.Equal(11, (double)Traces(figure)[4]["x"]![0]!);
    }

    [Fact]
    public void Rise_times_are_charted_in_standard_deviations()
    {
        var figure = Figure(MonthControlChart.Of(Review().RiseTimeChart.Value, UnitSystem.Us));
        Assert.Equal("Standard deviations from expected", (string?)figure["layout"]!["yaxis"]!["title"]!["text"]);
        Assert.Equal("Rise time against what the model expects", (string?)figure["layout"]!["title"]!["text"]);
    }

    private static MonthReview Review() => MonthReview.Of(Journal, "", Temperature.FromC(24));

    private static string Row(string letter, int month, int place, string row)
    {
        var cells = row.Split(',');
        return FormattableString.Invariant($"{letter}{place + 1},2026-{month:00}-{(2 * place) + 2:00},1000,weighed,{cells[0]},18,10,instant,")
            + FormattableString.Invariant($"21,20,{cells[2]},{cells[1]},{cells[3]},{cells[4]},1660,2,{cells[5]},{cells[6]},{cells[7]}");
    }

    private static JsonNode Figure(GenericChart chart) => JsonNode.Parse(GenericChart.toFigureJson(chart))!;

    private static List<JsonNode> Traces(JsonNode figure) => [.. figure["data"]!.AsArray().Select(trace => trace!)];
}
