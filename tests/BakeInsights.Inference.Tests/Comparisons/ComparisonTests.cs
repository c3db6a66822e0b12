using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Two groups, a spread and a share against base R (r/comparisons.R, run once with R 4.2).</summary>
public class ComparisonTests
{
    private const double Tolerance = 1e-10;

    private static readonly double[] First = [24.1, 23.6, 25.2, 24.8, 23.9, 24.4, 25.0, 24.6, 23.2, 24.9];
    private static readonly double[] Second = [25.3, 24.7, 26.4, 23.8, 25.9, 25.1, 27.0, 24.2, 25.6, 26.1, 24.9, 25.4];

    private static readonly ReferenceTable Table = ReferenceTable.Read("r/comparisons-expected.csv");

    private static readonly Dictionary<(string Case, string Quantity), double> Expected = Table.Texts("case")
        .Zip(Table.Texts("quantity"), Table.Numbers("value"))
        .ToDictionary(row => (row.First, row.Second), row => row.Third);

    [Fact]
    public void Difference_of_two_means_is_that_of_R()
    {
        var term = MeanDifference.Of(First, Second).Value;
        Close.Relative(Expected[("welch", "difference")], term.Estimate, Tolerance);
        Close.Relative(Expected[("welch", "degrees")], term.DegreesOfFreedom, Tolerance);
        Close.Relative(Expected[("welch", "p")], term.PValue, Tolerance);
        Same("welch", term.Interval(0.95));
    }

    [Fact]
    public void Few_values_have_the_degrees_of_freedom_of_the_smaller_group()
    {
        var term = MeanDifference.Of(First[..4], Second[..7]).Value;
        Assert.Equal(3, term.DegreesOfFreedom);
        Close.Relative(Expected[("small", "p")], term.PValue, Tolerance);
        Same("small", term.Interval(0.95));
    }

    [Fact]
    public void Interval_of_a_spread_is_that_of_R() =>
        Same("spread", SpreadInterval.Of(SampleMoments.Of(First).StandardDeviation!.Value, First.Length - 1, 0.95));

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(20)]
    public void Interval_of_a_share_is_that_of_R(int hits) => Same($"share-{hits}", ShareInterval.Of(hits, 20, 0.95));

    [Theory]
    [InlineData(3, 20, 1)]
    [InlineData(4, 9, 3)]
    [InlineData(10, 30, 1)]
    [InlineData(12, 12, 2)]
    public void Groups_of_one_mean_are_told_apart_no_more_often_than_in_one_case_of_twenty(int few, int many, double spread)
    {
        var hits = LongRun.Simulate(Coverage.DataSets, 5, random =>
        {
            double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            double[] one = [.. Enumerable.Range(0, few).Select(_ => spread * Normal())];
            double[] other = [.. Enumerable.Range(0, many).Select(_ => Normal())];
            return MeanDifference.Of(one, other).Value.PValue <= 0.05;
        }).Count(hit => hit);

        // Four standard deviations of a binomial count.
        Assert.InRange(hits, 0, (0.05 * Coverage.DataSets) + (4 * Math.Sqrt(Coverage.DataSets * 0.05 * 0.95)));
    }

    [Fact]
    public void What_can_not_be_compared_is_a_problem()
    {
        Assert.False(MeanDifference.Of([1], Second).Succeeded);
        Assert.False(MeanDifference.Of([1, double.NaN], Second).Succeeded);
        Assert.True(MeanDifference.Of([1, 1, 1], [2, 2]).TryGet(out _, out var problem) is false && problem.Kind == FitProblemKind.NoSpread);
        Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.Of(3, 2, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadInterval.Of(1, 0, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpreadInterval.Of(1, 2, 1));
    }

    private static void Same(string name, Interval actual)
    {
        Close.Absolute(Expected[(name, "low")], actual.Low, Tolerance);
        Close.Absolute(Expected[(name, "high")], actual.High, Tolerance);
    }
}
