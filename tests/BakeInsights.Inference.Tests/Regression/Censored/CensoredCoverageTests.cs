using System.Globalization;
using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Times with four causes, seen at looks: ln T = 4.8 + b'x + 0.12 e with x standard normal, so that the median is two
/// hours. The first cause's coefficient is the one counted.
/// </summary>
public class CensoredCoverageTests
{
    private const double Spread = 0.12;
    private static readonly double[] Truth = [4.8, -0.1, 0.08, 0.05, 0];

    [Theory]
    [InlineData(8)]
    [InlineData(40)]
    public void Midpoint_intervals_hold_the_truth_in_ninety_five_percent(int n)
    {
        var answers = Run(n, Coverage.DataSets / 2, 10, 0);

        Assert.InRange(Share(answers, a => a.FromMidpoints), 0.99, 1);
        IsNear(0.95, Share(answers, a => a.Holds), answers.Length);
    }

    [Fact]
    public void Likelihood_intervals_of_forty_rows_hold_the_truth_and_the_slope_is_not_biased()
    {
        var answers = Run(40, 300, 15, 0.3);

        Assert.All(answers, a => Assert.True(a is { Succeeded: true, FromMidpoints: false }));
        IsNear(0.95, Share(answers, a => a.Holds), answers.Length);
        Assert.InRange(Bias(answers), -0.05, 0.05);
    }

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] head =
        [
            "| rows | looks every | right-censored | fitted | by midpoints | coefficient | prediction | bias |",
            "|---|---|---|---|---|---|---|---|",
        ];
        var cases =
            from design in new[] { (Minutes: 10, Share: 0.0), (Minutes: 15, Share: 0.0), (Minutes: 15, Share: 0.3) }
            from n in new[] { 8, 12, 20, 40 }
            let answers = Run(n, LongRun.DataSets(20), design.Minutes, design.Share)
            select $"| {n} | {design.Minutes} min | {LongRun.Percent(design.Share)} % "
                + $"| {LongRun.Percent((double)answers.Count(a => a.Succeeded) / answers.Length)} % "
                + $"| {LongRun.Percent(Share(answers, a => a.FromMidpoints))} % "
                + $"| {LongRun.Percent(Share(answers, a => a.Holds))} % "
                + $"| {LongRun.Percent(Share(answers, a => a.Predicts))} % "
                + $"| {LongRun.Percent(Bias(answers))} % |";

        string[] lines = [.. head, .. cases];

        Assert.Equal(14, lines.Length);
        LongRun.Write("coverage-censored", lines);
    }

    private static Answer[] Run(int n, int dataSets, int minutes, double rightCensored) =>
        LongRun.Simulate(dataSets, n + minutes, random => One(random, n, minutes, rightCensored));

    private static Answer One(Random random, int n, int minutes, double rightCensored)
    {
        double[][] causes = [.. Enumerable.Range(0, 4).Select(_ => Draw(random, n))];
        var design = new Design([DesignColumn.Constant(n), .. causes.Select((c, j) => new DesignColumn($"x{j}", c))]);
        double Time(IReadOnlyList<double> row) =>
            Math.Exp(row.Zip(Truth, (x, b) => x * b).Sum() + Normal.Sample(random, 0, Spread));

        // Looking ends where so large a share is not ready yet: ln T is normal over the causes too.
        var total = Math.Sqrt((Spread * Spread) + Truth.Skip(1).Sum(b => b * b));
        var stop = rightCensored > 0
            ? Math.Exp(Truth[0] + (total * Normal.InvCDF(0, 1, 1 - rightCensored)))
            : double.PositiveInfinity;
        CensoredValue Seen(double time)
        {
            var low = Math.Floor(time / minutes) * minutes;
            return low + minutes > stop
                ? CensoredValue.Above(Math.Floor(stop / minutes) * minutes)
                : CensoredValue.Between(low, low + minutes);
        }

        var fit = CensoredLogNormal.Fit(
            design, [.. Enumerable.Range(0, n).Select(i => Seen(Time(design.Row(i))))]);
        double[] other = [1, .. Draw(random, 4)];
        return fit.Match(
            f => new Answer(
                true,
                f.IsFromMidpoints,
                f.Interval(1, 0.95).Contains(Truth[1]),
                f.PredictionInterval(other, 0.95).Contains(Time(other)),
                f.Terms[1].Estimate),
            _ => default);
    }

    private static double[] Draw(Random random, int n)
    {
        var values = new double[n];
        Normal.Samples(random, values, 0, 1);
        return values;
    }

    private static double Share(Answer[] answers, Func<Answer, bool> holds)
    {
        Answer[] fitted = [.. answers.Where(a => a.Succeeded)];
        return fitted.Length == 0 ? 0 : (double)fitted.Count(holds) / fitted.Length;
    }

    private static double Bias(Answer[] answers) =>
        (answers.Where(a => a.Succeeded).Select(a => a.Slope).DefaultIfEmpty(Truth[1]).Average() / Truth[1]) - 1;

    private static void IsNear(double nominal, double share, int dataSets) => Assert.True(
        Math.Abs(share - nominal) <= 4 * Math.Sqrt(nominal * (1 - nominal) / dataSets),
        share.ToString("R", CultureInfo.InvariantCulture));

    private readonly record struct Answer(
        bool Succeeded, bool FromMidpoints, bool Holds, bool Predicts, double Slope);
}
