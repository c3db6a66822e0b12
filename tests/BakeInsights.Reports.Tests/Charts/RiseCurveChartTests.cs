using Xunit;

namespace BakeInsights.Reports.Tests;

public class RiseCurveChartTests
{
    private static readonly RiseCurve[] Curves = [new GompertzRise(1.6, 0.025, 20), new LogisticRise(1.6, 0.025, 20)];

    // Published values of both curves at 60 min, see the worked examples of the core's tests.
    [Fact]
    public void Each_curve_is_a_line_of_its_own_and_doubled_is_one_more()
    {
        var html = ChartHtml.Fragment(RiseCurveChart.Of(Curves, 120));
        Assert.All(["Gompertz", "logistic", "doubled", "Minutes"], word => Assert.Contains(word, html, StringComparison.Ordinal));
        Assert.Contains("0.97324", html, StringComparison.Ordinal);
        Assert.Contains("0.99593", html, StringComparison.Ordinal);
    }

    [Fact]
    public void More_curves_than_colours_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RiseCurveChart.Of([.. Curves, .. Curves], 120));
}
