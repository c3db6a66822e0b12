using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>The slope of a line with normal errors, the mean of skewed values, and the slope by cluster.</summary>
public class BootstrapCoverageTests
{
    private const int Drawn = 999;

    [Fact]
    public void Intervals_of_eighty_rows_hold_the_slope_in_nearly_ninety_five_percent()
    {
        var held = Run(80, 1000);

        // Binomial with standard deviation 0.7 %; the method itself is a little short at this size.
        Assert.InRange(held.Count(h => h.Percentile), 910, 975);
        Assert.InRange(held.Count(h => h.Corrected), 910, 975);
    }

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] lines =
        [
            "| rows or clusters | slope, percentile | slope, corrected | skewed mean, percentile | skewed mean, "
                + "corrected | slope by cluster, percentile | slope by cluster, corrected |",
            "|---|---|---|---|---|---|---|",
            .. from n in new[] { 8, 12, 20, 40, 80, 160 }
               let held = Run(n, LongRun.DataSets(20))
               select $"| {n} | {Share(held, h => h.Percentile)} | {Share(held, h => h.Corrected)} "
                   + $"| {Share(held, h => h.MeanPercentile)} | {Share(held, h => h.MeanCorrected)} "
                   + $"| {Share(held, h => h.ClusterPercentile)} | {Share(held, h => h.ClusterCorrected)} |",
        ];

        Assert.Equal(8, lines.Length);
        LongRun.Write("coverage-bootstrap", lines);
    }

    private static string Share(Held[] held, Func<Held, bool> which) =>
        LongRun.Percent((double)held.Count(which) / held.Length) + " %";

    private static Held[] Run(int n, int dataSets) => LongRun.Simulate(dataSets, n, random =>
    {
        var resamples = new Resamples(Drawn, random.Next()) { Cores = 1 };
        double[] Draw(int count) => [.. Enumerable.Range(0, count).Select(_ => Normal.Sample(random, 0, 1))];

        var x = Draw(n);
        var line = Bootstrap.LeastSquares(
            new Design(DesignColumn.Constant(n), new DesignColumn("x", x)),
            [.. x.Zip(Draw(n), (v, e) => v + e)], resamples).Value.Of("x").Value;

        // Exponential values have mean 1.
        var mean = Bootstrap.LeastSquares(
            new Design(DesignColumn.Constant(n)), [.. Draw(n).Select(_ => -Math.Log(1 - random.NextDouble()))],
            resamples).Value.Of("constant").Value;

        const int Size = 3;
        var level = Draw(n);
        var inner = Draw(n * Size);
        string[] clusters = [.. Enumerable.Range(0, n * Size).Select(i => $"c{i / Size}")];
        var grouped = Bootstrap.LeastSquares(
            new Design(DesignColumn.Constant(n * Size), new DesignColumn("x", inner)),
            [
                .. inner.Zip(Draw(n * Size))
                    .Select((pair, i) => pair.First + pair.Second + (level[i / Size] * pair.First)),
            ],
            resamples,
            clusters).Value.Of("x").Value;
        return new Held(
            Holds(line.Percentile(0.95)), Holds(line.BiasCorrected(0.95)),
            Holds(mean.Percentile(0.95)), Holds(mean.BiasCorrected(0.95)),
            Holds(grouped.Percentile(0.95)), Holds(grouped.BiasCorrected(0.95)));
    });

    /// <summary>The truth is 1 throughout; no interval counts as a miss.</summary>
    private static bool Holds(Attempt<Interval> interval) => interval.Match(found => found.Contains(1), _ => false);

    private sealed record Held(
        bool Percentile, bool Corrected, bool MeanPercentile, bool MeanCorrected, bool ClusterPercentile,
        bool ClusterCorrected);
}
