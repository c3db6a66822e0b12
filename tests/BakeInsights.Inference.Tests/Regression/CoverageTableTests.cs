using System.Globalization;
using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// The coverage tables of docs/inference.md: how often a nominal 95 % interval holds the truth in 10,000 simulated data
/// sets. A count is then off by 0.22 percentage points, one standard deviation.
/// </summary>
/// <remarks>These take about a minute; a run that is in haste leaves them out with --filter Run!=long.</remarks>
public class CoverageTableTests
{
    private const int DataSets = 10_000;

    [Fact]
    [Trait("Run", "long")]
    public void Least_squares_intervals_cover_as_the_published_table_says()
    {
        var rows = new[] { 8, 12, 20, 40 }.Select(n =>
        {
            var random = new Random(5000 + n);
            int slope = 0, mean = 0, single = 0;
            for (var k = 0; k < DataSets; k++)
            {
                // Three columns about as far apart in size as temperature, hydration and log yeast are.
                double[][] x = [Normals(random, n, 24, 1.8), Normals(random, n, 65, 3), Normals(random, n, 0, 0.3)];
                double Truth(double a, double b, double c) => 4 - (0.09 * a) - (0.01 * b) - (0.7 * c);
                var y = Enumerable.Range(0, n)
                    .Select(i => Truth(x[0][i], x[1][i], x[2][i]) + Normal.Sample(random, 0, 0.1)).ToArray();
                var fit = LeastSquares.Fit(
                    new Design([DesignColumn.Constant(n), .. x.Select((values, j) => new DesignColumn($"x{j}", values))]),
                    y).Value;
                slope += fit.Terms[1].Interval(0.95).Contains(-0.09) ? 1 : 0;
                mean += fit.MeanInterval([1, 26, 70, 0.2], 0.95).Contains(Truth(26, 70, 0.2)) ? 1 : 0;
                single += fit.PredictionInterval([1, 26, 70, 0.2], 0.95)
                    .Contains(Truth(26, 70, 0.2) + Normal.Sample(random, 0, 0.1)) ? 1 : 0;
            }

            Assert.All(new[] { slope, mean, single }, hits => Assert.InRange(hits, 0.94 * DataSets, 0.96 * DataSets));
            return Row(n, slope, mean, single);
        });

        IsPublished("""
            | rows | slope | mean response | single response |
            |---|---|---|---|

            """ + string.Concat(rows));
    }

    [Fact]
    [Trait("Run", "long")]
    public void Intervals_corrected_for_a_probes_error_cover_as_the_published_table_says()
    {
        var rows =
            from error in new[] { 0.5, 1.0 }
            from n in new[] { 12, 20, 40 }
            select Calibration(error, n);

        IsPublished("""
            | probe's error, °C | rows | as read | corrected | corrected but unbounded |
            |---|---|---|---|---|

            """ + string.Concat(rows));
    }

    [Fact]
    [Trait("Run", "long")]
    public void Robust_intervals_cover_as_the_published_table_says()
    {
        const int searched = 1000;
        var rows = new[] { 12, 20, 40 }.Select(n =>
        {
            var random = new Random(9000 + n);
            int huber = 0, mm = 0;
            for (var k = 0; k < DataSets; k++)
            {
                var design = new Design(
                    DesignColumn.Constant(n), new DesignColumn("t", Normals(random, n, 24, 1.8)),
                    new DesignColumn("h", Normals(random, n, 65, 3)));
                double[] y = [.. design.Columns[1].Values.Select(t => 4 - (0.09 * t) + Normal.Sample(random, 0, 0.1))];
                huber += Covers(RobustRegression.Huber(design, y));
                mm += k < searched ? Covers(RobustRegression.MmEstimate(design, y, k)) : 0;
            }

            return $"| {n} | {Percent(huber)} | {Percent(mm * (DataSets / searched))} |\n";
        });

        IsPublished("""
            | rows | Huber | MM |
            |---|---|---|

            """ + string.Concat(rows));
    }

    private static int Covers(Attempt<RobustFit> attempt) =>
        attempt.TryGet(out var fit, out _) && fit.Terms[1].Interval(0.95).Contains(-0.09) ? 1 : 0;

    private static string Calibration(double error, int n)
    {
        var random = new Random(7000 + n);
        int asRead = 0, corrected = 0, unbounded = 0, refused = 0;
        for (var k = 0; k < DataSets; k++)
        {
            var truth = Normals(random, n, 24, 1.8);
            double[] readings = [.. truth.Select(x => x + Normal.Sample(random, 0, error))];
            double[] y = [.. truth.Select(x => 4 - (0.09 * x) + Normal.Sample(random, 0, 0.1))];
            var fit = LeastSquares.Fit(
                new Design(DesignColumn.Constant(n), new DesignColumn("probe", readings)), y).Value;
            asRead += fit.Terms[1].Interval(0.95).Contains(-0.09) ? 1 : 0;
            if (!PredictorError.Classical(fit, "probe", error).TryGet(out var calibrated, out _))
            {
                refused++;
                continue;
            }

            var set = calibrated.SlopeInterval(0.95);
            corrected += set.Contains(-0.09) ? 1 : 0;
            unbounded += set.Kind == RatioSetKind.Bounded ? 0 : 1;
        }

        var made = DataSets - refused;
        if (n == 40)
        {
            Assert.InRange(corrected, 0.93 * made, 0.97 * made);
        }

        return $"| {error.ToString("F1", CultureInfo.InvariantCulture)} "
            + Row(n, asRead, corrected, unbounded);
    }

    private static double[] Normals(Random random, int count, double mean, double deviation) =>
        [.. Enumerable.Range(0, count).Select(_ => Normal.Sample(random, mean, deviation))];

    private static string Row(int n, params int[] hits) =>
        $"| {n} | {string.Join(" | ", hits.Select(hit => Percent(hit)))} |\n";

    private static string Percent(int hits) =>
        (100.0 * hits / DataSets).ToString("F1", CultureInfo.InvariantCulture) + " %";

    private static void IsPublished(string table) => Assert.True(
        File.ReadAllText(Repository.Path("docs/inference.md")).Contains(table, StringComparison.Ordinal),
        $"docs/inference.md doesn't hold this table:\n{table}");
}
