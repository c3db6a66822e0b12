using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>A line of slope 1 from 0 to 1 with errors of spread 0.1, read once at 0.3.</summary>
public class InversePredictionCoverageTests
{
    private const double Spread = 0.1, Truth = 0.3;

    [Theory]
    [InlineData(8)]
    [InlineData(40)]
    public void Sets_hold_the_true_value_in_ninety_five_percent(int n) =>
        Coverage.IsNinetyFivePercent(Run(n, Coverage.DataSets).Count(held => held.One));

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] lines =
        [
            "| rows | one reading | three readings | mean reading |",
            "|---|---|---|---|",
            .. from n in new[] { 8, 12, 20, 40 }
               let held = Run(n, LongRun.DataSets(20))
               select $"| {n} | {Share(held, h => h.One)} | {Share(held, h => h.Three)} | {Share(held, h => h.Mean)} |",
        ];

        Assert.Equal(6, lines.Length);
        LongRun.Write("coverage-calibration", lines);
    }

    private static string Share(Held[] held, Func<Held, bool> which) =>
        LongRun.Percent((double)held.Count(which) / held.Length) + " %";

    private static Held[] Run(int n, int dataSets) => LongRun.Simulate(dataSets, n, random =>
    {
        double Reading(double x) => 2 + x + Normal.Sample(random, 0, Spread);
        double[] x = [.. Enumerable.Range(0, n).Select(i => i / (n - 1.0))];
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(n), new DesignColumn("x", x)), [.. x.Select(Reading)]).Value;
        return new Held(
            InversePrediction.Of(fit, "x", [Reading(Truth)], 0.95).Value.Set.Contains(Truth),
            InversePrediction.Of(fit, "x", [Reading(Truth), Reading(Truth), Reading(Truth)], 0.95).Value.Set
                .Contains(Truth),
            InversePrediction.OfMean(fit, "x", 2 + Truth, 0.95).Value.Set.Contains(Truth));
    });

    private sealed record Held(bool One, bool Three, bool Mean);
}
