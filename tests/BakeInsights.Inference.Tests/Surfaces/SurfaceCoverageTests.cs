using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// A central composite plan in two factors, once or more, over a top at (0.4, -0.2) whose bends are 2 and 1 with errors
/// of spread 0.5.
/// </summary>
public class SurfaceCoverageTests
{
    private const int Drawn = 999;
    private static readonly double[] Top = [0.4, -0.2];

    /// <summary>Four corners, four points on the axes at the root of 2, and five in the middle.</summary>
    private static readonly (double A, double B)[] Plan =
    [
        (-1, -1), (1, -1), (-1, 1), (1, 1), (1.4142, 0), (-1.4142, 0), (0, 1.4142), (0, -1.4142),
        (0, 0), (0, 0), (0, 0), (0, 0), (0, 0),
    ];

    [Fact]
    public void Regions_of_one_plan_hold_the_top_in_ninety_five_percent() =>
        Coverage.IsNinetyFivePercent(Run(1, Coverage.DataSets, resampled: false).Count(h => h.Region));

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] lines =
        [
            "| rows | region of Box and Hunter | first factor, percentile | first factor, corrected "
                + "| second factor, percentile | second factor, corrected |",
            "|---|---|---|---|---|---|",
            .. from times in new[] { 1, 2, 4 }
               let held = Run(times, LongRun.DataSets(20), resampled: true)
               select $"| {times * Plan.Length} | {Share(held, h => h.Region)} | {Share(held, h => h.First)} "
                   + $"| {Share(held, h => h.FirstCorrected)} | {Share(held, h => h.Second)} "
                   + $"| {Share(held, h => h.SecondCorrected)} |",
        ];

        Assert.Equal(5, lines.Length);
        LongRun.Write("coverage-surface", lines);
    }

    private static string Share(Held[] held, Func<Held, bool> which) =>
        LongRun.Percent((double)held.Count(which) / held.Length) + " %";

    private static Held[] Run(int times, int dataSets, bool resampled)
    {
        var points = Enumerable.Repeat(Plan, times).SelectMany(p => p).ToArray();
        var design = new Design(
        [
            DesignColumn.Constant(points.Length),
            .. SurfaceColumns.Of([new("a", [.. points.Select(p => p.A)]), new("b", [.. points.Select(p => p.B)])]),
        ]);
        return LongRun.Simulate(dataSets, times, random =>
        {
            double[] y =
            [
                .. points.Select(p => 10 - (2 * (p.A - Top[0]) * (p.A - Top[0])) - ((p.B - Top[1]) * (p.B - Top[1]))
                    + Normal.Sample(random, 0, 0.5)),
            ];
            var fit = LeastSquares.Fit(design, y).Value;
            var region = StationaryPoint.Of(fit, ["a", "b"], 0.95).Value.RegionHolds(Top, 0.95);
            if (!resampled)
            {
                return new Held(region, false, false, false, false);
            }

            var refits = Bootstrap.LeastSquaresErrors(
                design, y, new Resamples(Drawn, random.Next()) { Cores = 1 }).Value;
            var places = StationaryPoint.Resampled(refits, ["a", "b"]);
            bool Holds(int factor, Func<BootstrapDistribution, Attempt<Interval>> interval) =>
                places[factor].TryGet(out var distribution, out _)
                && interval(distribution).TryGet(out var found, out _) && found.Contains(Top[factor]);
            return new Held(
                region, Holds(0, d => d.Percentile(0.95)), Holds(0, d => d.BiasCorrected(0.95)),
                Holds(1, d => d.Percentile(0.95)), Holds(1, d => d.BiasCorrected(0.95)));
        });
    }

    private sealed record Held(bool Region, bool First, bool FirstCorrected, bool Second, bool SecondCorrected);
}
