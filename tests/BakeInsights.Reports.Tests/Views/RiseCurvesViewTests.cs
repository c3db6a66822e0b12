using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class RiseCurvesViewTests
{
    [Fact]
    public void Rises_of_the_demo_journal_read_as_approved() => Approved.Matches(
        "tests/BakeInsights.Reports.Tests/Approved/demo-rises.txt", RiseCurvesView.Of(RiseCurves.Of(Demo.Journal)).ToText());

    [Fact]
    public void Text_fits_a_terminal_of_80_columns() => Assert.All(
        RiseCurvesView.Of(RiseCurves.Of(Demo.Journal)).ToText().Split('\n'), line => Assert.True(line.Length <= 80, line));

    [Fact]
    public void Name_of_a_bake_is_harmless_in_html()
    {
        var attempt = RiseCurves.Of(Demo.Journal)[0] with { BakeId = "<b>" };
        Assert.Contains("&lt;b&gt;, first rise", RiseCurvesView.Of(attempt).ToHtml(), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>,", ChartHtml.Fragment(RiseCurveChart.Of(attempt)!), StringComparison.Ordinal);
    }

    [Fact]
    public void Journal_without_readings_says_so() =>
        Assert.Contains("no readings of a rise", RiseCurvesView.Of([]).ToText(), StringComparison.Ordinal);

    [Fact]
    public void Chart_has_readings_curve_ceiling_and_the_interval_of_doubling()
    {
        var html = ChartHtml.Fragment(RiseCurveChart.Of(RiseCurves.Of(Demo.Journal)[0])!);
        Assert.All(
            ["reading", "fitted, Gompertz", "ceiling", "time to double (95 %)", "ML-03, first rise: doubled at 72 min (68 to 76)"],
            word => Assert.Contains(word, html, StringComparison.Ordinal));
    }

    [Fact]
    public void Dough_that_never_doubles_has_a_chart_without_that_interval_and_a_problem_has_none()
    {
        var attempts = RiseCurves.Of(Demo.Journal);
        var proof = ChartHtml.Fragment(RiseCurveChart.Of(attempts.Single(attempt => attempt.Stage == RiseStage.Proof))!);
        Assert.DoesNotContain("time to double", proof, StringComparison.Ordinal);
        Assert.Null(RiseCurveChart.Of(attempts[^1]));
    }
}
