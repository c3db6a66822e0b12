using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Simulated groups of unequal size, one column beside them.</summary>
public class GroupSpreadTests
{
    private const double Level = 0.95;

    // The share of 1,000 data sets is off by 0.7 % (one standard deviation).
    private const int DataSets = 1_000;

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

        // The ratio's interval has no upper end in one data set of forty, and the effects' reach further than they need
        // where groups hardly differ.
        Assert.InRange(ratio, 0.93, 0.985);
        Assert.InRange(deviation, 0.93, 0.985);
        Assert.InRange(effects, 0.93, spread >= 1 ? 0.985 : 1);
        if (spread == 0)
        {
            Assert.Equal(0.05, rejected, 4 * Math.Sqrt(0.05 * 0.95 / DataSets));
        }
    }

    [Fact]
    public void Test_is_the_comparison_of_fixed_groups_and_equal_groups_have_the_textbook_ratio()
    {
        // Davies and Goldsmith (1972), section 6.4, as in r/dyestuff.csv: five rows in each of six batches, mean squares
        // 11271.5 and 2451.25; F quantiles from R: qf(0.975, 5, 24), qf(0.025, 5, 24), qchisq(0.975, 5).
        var data = ReferenceTable.Read("r/dyestuff.csv");
        var found = GroupSpread.Of(
            new Design(DesignColumn.Constant(data.RowCount)), data.Numbers(data.Header[1]), "batch", data.Texts(data.Header[0]), Level).Value;
        const double upper = 3.15481634253311, lower = 0.159285378462895, chiUpper = 12.83250199403;
        var f = 11271.5 / 2451.25;
        Close.Relative(f, found.Test.FValue, 1e-10);
        Close.Relative(((f / upper) - 1) / 5, found.VarianceRatio.Low, 1e-7);
        Close.Relative(((f / lower) - 1) / 5, found.VarianceRatio.High, 1e-7);
        Close.Relative(Math.Sqrt((11271.5 - (2451.25 * upper)) / 5 / (chiUpper / 5)), found.Deviation.Low, 1e-7);
    }

    [Fact]
    public void What_can_not_be_compared_is_a_problem()
    {
        double[] y = [1, 2, 4, 3, 5, 7];
        FitProblemKind Kind(string labels) => GroupSpread.Of(
            new Design(DesignColumn.Constant(6)), y, "bench", [.. labels.Select(letter => $"{letter}")], Level).Match(_ => default, problem => problem.Kind);
        Assert.Equal(FitProblemKind.TooFewGroups, Kind("aaaaaa"));
        Assert.Equal(FitProblemKind.TooFewRows, GroupSpread.Of(
            new Design(DesignColumn.Constant(2)), [1, 2], "bench", ["a", "b"], Level).Match(_ => default, problem => problem.Kind));
        Assert.Throws<ArgumentException>(() => GroupSpread.Of(new Design(new DesignColumn("x", y)), y, "bench", [.. "aabbcc".Select(c => $"{c}")], Level));
    }

    [Fact]
    public void Averaged_intervals_are_of_restricted_fits_without_slopes()
    {
        double[] y = [1, 2, 4, 3, 5, 7];
        var fit = MixedModel.Fit(new Design(DesignColumn.Constant(6)), y, "bench", ["a", "a", "b", "b", "c", "c"], criterion: MixedCriterion.Full).Value;
        Assert.Throws<InvalidOperationException>(() => fit.AveragedIntervals(Level));
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
