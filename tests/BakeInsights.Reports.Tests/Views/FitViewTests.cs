using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>The answers in words and tables.</summary>
public class FitViewTests
{
    public static TheoryData<UnitSystem> Systems => new(UnitSystem.Metric, UnitSystem.Us);

    [Theory]
    [MemberData(nameof(Systems))]
    public void The_fit_of_the_demo_journal_reads_as_approved(UnitSystem units)
    {
        var text = Demo.FitText(units);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/demo-fit-{units.ToString().ToLowerInvariant()}.txt", text);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Text_and_HTML_are_the_same_bytes_in_every_culture(string culture)
    {
        Assert.NotEqual("1.5", Demo.Under("de-DE", () => $"{1.5}"));
        foreach (var units in new[] { UnitSystem.Metric, UnitSystem.Us })
        {
            Assert.Equal(Demo.Under("en-US", () => Written(units)), Demo.Under(culture, () => Written(units)));
        }
    }

    [Theory]
    [MemberData(nameof(Systems))]
    public void The_headline_on_rise_time_has_the_tables_numbers(UnitSystem units)
    {
        var view = RiseTimeView.Of(Demo.RiseTime, 45, units);
        var headline = Regex.Match(
            Paragraph(view),
            @"ready about (?<min>\d+) min sooner \((?<minLow>\d+) to (?<minHigh>\d+)\), "
            + @"which is (?<pct>[\d.]+) % of its time \((?<pctLow>[\d.]+) to (?<pctHigh>[\d.]+)\)"
            + @".* ready in (?<time>\d+) min\..* means (?<q10>[\d.]+) times as fast \(Q10, (?<q10Low>[\d.]+) to (?<q10High>[\d.]+)\)");
        Assert.True(headline.Success, Paragraph(view));
        double Said(string name) => double.Parse(headline.Groups[name].Value, CultureInfo.InvariantCulture);

        var row = Tables(view)[0].Rows[0];
        Assert.Equal($"−{headline.Groups["pct"].Value} %", row[1]);
        Assert.Equal($"−{headline.Groups["pctHigh"].Value} to −{headline.Groups["pctLow"].Value} %", row[2]);

        // Minutes are percents of the typical time, to the rounding of both.
        foreach (var (minutes, percent) in new[] { ("min", "pct"), ("minLow", "pctLow"), ("minHigh", "pctHigh") })
        {
            Assert.Equal(Said("time") * Said(percent) / 100, Said(minutes), 0.6);
        }

        // Q10 = exp(-10 x slope), the slope as the table of terms prints it, per °C in either system.
        var slope = Tables(view)[2].Rows[1];
        Assert.Equal(Said("q10"), Math.Exp(-10 * Number(slope[2])), 0.06);
        var ends = slope[4].Split(" to ").Select(Number).ToArray();
        Assert.Equal(Said("q10High"), Math.Exp(-10 * ends[0]), 0.06);
        Assert.Equal(Said("q10Low"), Math.Exp(-10 * ends[1]), 0.06);
    }

    [Theory]
    [MemberData(nameof(Systems))]
    public void The_headline_on_volume_has_the_tables_numbers(UnitSystem units)
    {
        var view = LoafVolumeView.Of(Demo.LoafVolume, 45, units);
        var headline = Regex.Match(
            Paragraph(view),
            @"largest at about (?<best>[\d.]+) % hydration, for a dough of \d.* "
            + @"\(95 % interval: (?<low>[\d.]+) to (?<high>[\d.]+) %\)\. .* for (?<share>\d+) %");
        Assert.True(headline.Success, Paragraph(view));
        double Said(string name) => double.Parse(headline.Groups[name].Value, CultureInfo.InvariantCulture);

        var terms = Tables(view)[1].Rows.ToDictionary(row => row[0], row => Number(row[2]));
        Assert.Equal(Said("best"), 65 - (terms["hydration"] / (2 * terms["hydration squared"])), 0.1);
        Assert.InRange(Said("best"), Said("low"), Said("high"));
        Assert.Equal(100 * Demo.LoafVolume.Value.RSquared, Said("share"), 0.5);
    }

    [Fact]
    public void US_units_change_what_is_read_and_not_what_is_so()
    {
        var metric = Tables(RiseTimeView.Of(Demo.RiseTime, 45, UnitSystem.Metric));
        var us = Tables(RiseTimeView.Of(Demo.RiseTime, 45, UnitSystem.Us));
        Assert.Equal("dough 1 °C warmer", metric[0].Rows[0][0]);
        Assert.Equal("dough 1 °F warmer", us[0].Rows[0][0]);

        // 1 °F is 1/1.8 °C: 0.909^(1/1.8) = 0.948.
        Assert.Equal("−8.7 %", metric[0].Rows[0][1]);
        Assert.Equal("−4.9 %", us[0].Rows[0][1]);
        Assert.Equal(metric[0].Rows.Skip(1), us[0].Rows.Skip(1));
        Assert.Equal(metric[1].Rows.Skip(1), us[1].Rows.Skip(1));
        Assert.Equal(metric[2].Rows, us[2].Rows);
    }

    [Fact]
    public void Hostile_text_of_a_journal_is_encoded_in_HTML()
    {
        const string hostile = "<script>alert('x')</script>&\"<b>";
        var quoted = $"\"{hostile.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
        var journal = Demo.Changed(line => line
            .Replace("ML-05,", quoted + ",", StringComparison.Ordinal)
            .Replace("2026-13-21", hostile.Replace("\"", "", StringComparison.Ordinal), StringComparison.Ordinal));
        View[] views =
        [
            JournalView.Of(journal),
            BakesView.Of(journal.Bakes, UnitSystem.Metric),
            RiseTimeView.Of(RiseTime.Ask(journal.Bakes), journal.Bakes.Count, UnitSystem.Metric),
        ];
        Assert.All(views, view =>
        {
            var html = view.ToHtml();
            Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
            Assert.Contains("alert(", html, StringComparison.Ordinal);
        });
        Assert.Contains(hostile, WebUtility.HtmlDecode(views[1].ToHtml()), StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_that_can_not_be_given_is_a_heading_and_the_problem()
    {
        var journal = Demo.Read("bake_id,baked_on,rise_min", "A,2026-10-01,90");
        Assert.Equal(
            "Rise time\n---------\n\nThe journal can't support a single cause: 1 bake has a rise time. dough\n"
            + "temperature: It is not in the journal. log yeast: It is not in the journal.\n"
            + "hydration: It is not in the journal. salt: It is not in the journal. sugar: It\n"
            + "is not in the journal. Log more bakes, and change the dough temperature by a few\ndegrees from one to the next.\n",
            RiseTimeView.Of(RiseTime.Ask(journal.Bakes), 1, UnitSystem.Metric).ToText());
        Assert.Contains(
            "No bake has a loaf volume that can be used. Log the loaf volume of each bake.",
            LoafVolumeView.Of(LoafVolume.Ask(journal.Bakes), 1, UnitSystem.Metric).ToText(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Without_dough_temperatures_volume_is_told_by_hydration_alone()
    {
        var journal = Demo.Changed(line => line.Replace("dough_temp_c", "own_column", StringComparison.Ordinal));
        var view = LoafVolumeView.Of(LoafVolume.Ask(journal.Bakes), journal.Bakes.Count, UnitSystem.Metric);
        Assert.Contains("Hydration accounts for ", Paragraph(view), StringComparison.Ordinal);
        Assert.Equal("Specific volume to expect, over the hydrations baked.", Tables(view)[0].Caption);
        Assert.Equal(5, Tables(view)[0].Rows.Count);
        Assert.Equal(
            "The journal can't say what the dough's temperature does to the rise time.",
            Paragraph(RiseTimeView.Of(RiseTime.Ask(journal.Bakes), journal.Bakes.Count, UnitSystem.Metric)));
    }

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static string Paragraph(View view) => view.Blocks.OfType<ViewParagraph>().First().Text;

    private static List<ViewTable> Tables(View view) => [.. view.Blocks.OfType<ViewTable>()];

    private static string Written(UnitSystem units) =>
        string.Concat(Demo.FitViews(units).Append(BakesView.Of(Demo.Journal.Bakes, units)).Append(BakesView.Summary(Demo.Journal.Bakes, units))
            .Select(view => view.ToText() + view.ToHtml()));
}
