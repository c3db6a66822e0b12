using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Four judges, things and errors of spread 1, judges of spread 0.5: the agreement of one judge is 1 / 2.25, of the
/// mean four times this over 1 + three times this. Two raters put normal things into four categories.
/// </summary>
public class AgreementCoverageTests
{
    private const int Judges = 4;
    private const double Absolute = 1 / 2.25, Consistency = 0.5;

    [Fact]
    public void Intervals_of_consistency_hold_the_truth_in_ninety_five_percent() =>
        Coverage.IsNinetyFivePercent(Run(12, Coverage.DataSets).Count(held => held.Consistency));

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        var truth = KappaTruth();
        string[] lines =
        [
            "| things | absolute agreement | consistency | weighted kappa, linear |",
            "|---|---|---|---|",
            .. from n in new[] { 6, 8, 12, 20, 40, 80 }
               let held = Run(n, LongRun.DataSets(20))
               let kappa = LongRun.Simulate(LongRun.DataSets(20), n + 500, random => KappaHolds(random, n, truth))
               select $"| {n} | {Share(held.Count(h => h.Absolute), held.Length)} "
                   + $"| {Share(held.Count(h => h.Consistency), held.Length)} "
                   + $"| {Share(kappa.Count(k => k), kappa.Length)} |",
        ];

        Assert.Equal(8, lines.Length);
        LongRun.Write("coverage-agreement", lines);
    }

    private static string Share(int count, int all) => LongRun.Percent((double)count / all) + " %";

    private static (bool Absolute, bool Consistency)[] Run(int things, int dataSets) =>
        LongRun.Simulate(dataSets, things, random =>
        {
            double[] judges = [.. Enumerable.Range(0, Judges).Select(_ => Normal.Sample(random, 0, 0.5))];
            var ratings = new double[things, Judges];
            for (var i = 0; i < things; i++)
            {
                var thing = Normal.Sample(random, 0, 1);
                for (var j = 0; j < Judges; j++)
                {
                    ratings[i, j] = thing + judges[j] + Normal.Sample(random, 0, 1);
                }
            }

            var table = RatingTable.Of(ratings).Value;
            return (
                IntraclassCorrelation.Of(table, AgreementKind.Absolute).Value.SingleInterval(0.95).Contains(Absolute),
                IntraclassCorrelation.Of(table, AgreementKind.Consistency).Value.SingleInterval(0.95)
                    .Contains(Consistency));
        });

    private static bool KappaHolds(Random random, int things, double truth)
    {
        var pairs = Enumerable.Range(0, things).Select(_ => Rate(random)).ToArray();
        return Kappa.Of([.. pairs.Select(p => p.First)], [.. pairs.Select(p => p.Second)], 4, KappaWeighting.Linear)
            .Match(kappa => kappa.Interval(0.95).Contains(truth), _ => false);
    }

    /// <summary>Kappa of a million things, whose standard error is 0.0007.</summary>
    private static double KappaTruth()
    {
        var random = new Random(1968);
        var counts = new int[4, 4];
        for (var i = 0; i < 1_000_000; i++)
        {
            var (first, second) = Rate(random);
            counts[first, second]++;
        }

        return Kappa.Of(counts, KappaWeighting.Linear).Value.Estimate;
    }

    private static (int First, int Second) Rate(Random random)
    {
        var thing = Normal.Sample(random, 0, 1);
        int Category() => (thing + Normal.Sample(random, 0, 0.6)) switch { < -0.8 => 0, < 0 => 1, < 0.8 => 2, _ => 3 };
        return (Category(), Category());
    }
}
