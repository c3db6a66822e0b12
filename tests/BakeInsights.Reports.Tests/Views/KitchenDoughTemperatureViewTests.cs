using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>The demo kitchen's dough temperature in words, tables and a chart.</summary>
public class KitchenDoughTemperatureViewTests
{
    private static readonly KitchenDoughTemperature Learned = KitchenDoughTemperature.Learn(Demo.Journal.Bakes).Value;

    public static TheoryData<UnitSystem> Systems => new(UnitSystem.Metric, UnitSystem.Us);

    [Theory]
    [MemberData(nameof(Systems))]
    public void The_demo_kitchen_reads_as_approved(UnitSystem units)
    {
        var text = Written(units, view => view.ToText());
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/kitchen-dough-{units.ToString().ToLowerInvariant()}.txt", text);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Text_and_HTML_are_the_same_bytes_in_every_culture(string culture)
    {
        static string All() => string.Concat(
            Written(UnitSystem.Us, view => view.ToText() + view.ToHtml()), Written(UnitSystem.Metric, view => view.ToText() + view.ToHtml()));
        Assert.Equal(Demo.Under("en-US", All), Demo.Under(culture, All));
    }

    [Fact]
    public void US_units_change_temperatures_by_the_32_and_differences_never()
    {
        var metric = Rows(UnitSystem.Metric);
        var us = Rows(UnitSystem.Us);

        // A degree for each degree is the same number; °C of warming, and °C a minute, times 1.8.
        Assert.Equal(metric.Skip(1).Take(3).Select(row => row[1]), us.Skip(1).Take(3).Select(row => row[1]));
        foreach (var row in new[] { 0, 4 })
        {
            Assert.All(Numbers(metric[row][1]).Zip(Numbers(us[row][1])), pair => Assert.Equal(1.8 * pair.First, pair.Second, 0.02));
        }

        Assert.Equal("mixing for 8 min, all at 75 °F", us[0][0]);
        Assert.Equal("water 1 °F warmer", us[1][0]);
    }

    [Fact]
    public void What_can_not_be_said_is_a_heading_and_the_problem()
    {
        var problem = new Inference.FitProblem(Inference.FitProblemKind.NoSpread, ["water_temp_c"], "No water.", "Log it.");
        Assert.Equal("Water\n-----\n\nNo water. Log it.\n", KitchenDoughTemperatureView.Of((Inference.Attempt<NeededWater>)problem, UnitSystem.Us).ToText());
        Assert.Equal(
            "Dough temperature of this kitchen\n---------------------------------\n\nNo water. Log it.\n",
            KitchenDoughTemperatureView.Of((Inference.Attempt<KitchenDoughTemperature>)problem, 3, UnitSystem.Us).ToText());
    }

    [Fact]
    public void A_bakes_name_is_encoded_in_HTML()
    {
        var journal = Demo.Changed(line => line.Replace("ML-41,", "<script>&,", StringComparison.Ordinal));
        var view = KitchenDoughTemperatureView.Of(KitchenDoughTemperature.Learn(journal.Bakes), journal.Bakes.Count, UnitSystem.Metric);
        Assert.DoesNotContain("<script", view.ToHtml(), StringComparison.Ordinal);
        Assert.Contains("<script>&", WebUtility.HtmlDecode(view.ToHtml()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "°C", 1, 0)]
    [InlineData(UnitSystem.Us, "°F", 1.8, 32)]
    public void The_chart_shows_every_dough_against_what_was_expected_of_it(UnitSystem units, string label, double factor, double offset)
    {
        var figure = JsonNode.Parse(GenericChart.toFigureJson(ObservedAgainstPredicted.Of(Learned, units)!))!;
        var points = figure["data"]![1]!;
        Assert.Equal($"Dough temperature expected ({label})", (string?)figure["layout"]!["xaxis"]!["title"]!["text"]);
        Assert.Equal($"Dough temperature logged ({label})", (string?)figure["layout"]!["yaxis"]!["title"]!["text"]);
        Assert.Equal(Learned.Expected.Select(c => (c * factor) + offset), points["x"]!.AsArray().Select(x => (double)x!));
        Assert.Equal(
            Learned.Used.Select(bake => (bake[BakeColumns.DoughTemp]!.Value * factor) + offset), points["y"]!.AsArray().Select(y => (double)y!));
        Assert.Null(ObservedAgainstPredicted.Of(KitchenDoughTemperature.Learn([]).Value, units));
    }

    private static IReadOnlyList<IReadOnlyList<string>> Rows(UnitSystem units) =>
        KitchenDoughTemperatureView.Of(Learned, 45, units).Blocks.OfType<ViewTable>().Single().Rows;

    private static IEnumerable<double> Numbers(string cell) => Regex.Matches(cell, @"−?\d+\.\d+")
        .Select(match => double.Parse(match.Value.Replace('−', '-'), CultureInfo.InvariantCulture));

    private static string Written(UnitSystem units, Func<View, string> write)
    {
        var conditions = new MixingConditions(Temperature.FromC(20), Temperature.FromC(21)) { MixMin = 8 };
        var kitchen = new KitchenWater(Temperature.FromC(16), Temperature.FromC(50), 100);
        var heatWave = new MixingConditions(Temperature.FromC(29), Temperature.FromC(31));
        return string.Join("\n", new[]
        {
            KitchenDoughTemperatureView.Of(Learned, Demo.Journal.Bakes.Count, units),
            KitchenDoughTemperatureView.Of(Learned.WaterFor(Temperature.FromC(24), conditions, kitchen, 650), units),
            KitchenDoughTemperatureView.Of(Learned.WaterFor(Temperature.FromC(23), heatWave, kitchen, 650), units),
            KitchenDoughTemperatureView.Of(KitchenDoughTemperature.Learn([]), 0, units),
        }.Select(write));
    }
}
