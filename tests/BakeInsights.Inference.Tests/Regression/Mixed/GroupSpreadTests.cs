using MathNet.Numerics.Distributions;
using Xunit;
using Xunit.Abstractions;

namespace BakeInsights.Inference.Tests;

/// <summary>Simulated groups of unequal size, one column beside them.</summary>
public class GroupSpreadTests(ITestOutputHelper output)
{
    private const double Level = 0.95;

    // Within three standard deviations of what 1,500 data sets show of 95 %.
    private const int DataSets = 1_500;

    [Theory]
    [InlineData(3, 4, 0.5)]
    [InlineData(4, 5, 0)]
    [InlineData(4, 5, 0.3)]
    [InlineData(5, 3, 1)]
    [InlineData(6, 6, 0.3)]
    [InlineData(6, 8, 2)]
    [InlineData(12, 5, 0.5)]
    public void Intervals_hold_the_truth_as_often_as_they_say(int groups, int rows, double spread)
    {
        var found = LongRun.Simulate(LongRun.DataSets(DataSets), 11 + groups, random => One(groups, rows, spread, random));
        double Share(Func<(bool Ratio, bool Deviation, double Effects, bool Rejected), double> of) => found.Average(of);
        var (ratio, deviation, effects, rejected) =
            (Share(f => f.Ratio ? 1 : 0), Share(f => f.Deviation ? 1 : 0), Share(f => f.Effects), Share(f => f.Rejected ? 1 : 0));
        output.WriteLine($"{groups} groups of {rows}, spread {spread}: ratio {ratio:F3}, deviation {deviation:F3}, effects {effects:F3}, rejected {rejected:F3}");
    }

    private static (bool Ratio, bool Deviation, double Effects, bool Rejected) One(int groups, int rows, double spread, Random random)
    {
        double Normally() => Normal.Sample(random, 0, 1);
        var effects = Enumerable.Range(0, groups).Select(_ => spread * Normally()).ToArray();
        int[] groupOf = [.. Enumerable.Range(0, groups).SelectMany(g => Enumerable.Repeat(g, rows + (g % 3) - 1))];
        double[] x = [.. groupOf.Select(_ => Normally())];
        double[] y = [.. groupOf.Zip(x, (g, at) => 5 + (0.5 * at) + effects[g] + Normally())];
        string[] labels = [.. groupOf.Select(g => $"g{g:00}")];
        var design = new Design(DesignColumn.Constant(y.Length), new DesignColumn("x", x));
        var found = GroupSpread.Of(design, y, "bench", labels, Level).Value;
        var fit = MixedModel.Fit(design, y, "bench", labels).Value;
        var held = fit.AveragedIntervals(Level).Zip(effects).Average(pair => pair.First.Contains(pair.Second) ? 1.0 : 0);
        return (found.VarianceRatio.Contains(spread * spread), found.Deviation.Contains(spread), held, found.Test.PValue <= 0.05);
    }
}
