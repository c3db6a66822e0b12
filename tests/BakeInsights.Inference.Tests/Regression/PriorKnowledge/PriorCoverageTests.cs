using BakeInsights.TestKit;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// A response of four standard normal columns and a spread of 1; a normal prior of one coefficient, as wide as half of
/// the column's own standard error at twenty rows and as wide as that error.
/// </summary>
public class PriorCoverageTests
{
    private const double Narrow = 0.12, Wide = 0.25;

    [Theory]
    [InlineData(8)]
    [InlineData(20)]
    public void Intervals_hold_the_truth_in_ninety_five_percent_where_it_comes_from_the_prior(int n)
    {
        var answers = Run(n, 400, Wide, null);

        Assert.InRange(Share(answers, a => a.Holds), 0.95 - Margin(answers), 0.95 + Margin(answers));
        Assert.InRange(Share(answers, a => a.HoldsOther), 0.95 - Margin(answers), 0.95 + Margin(answers));
        Assert.InRange(Share(answers, a => a.Conflict), 0.05 - Margin(answers), 0.05 + Margin(answers));
    }

    [Fact]
    public void Table_of_coverage_can_be_made_again()
    {
        string[] head =
        [
            "| rows | prior SD | truth | its coefficient | another | prediction | conflict found |",
            "|---|---|---|---|---|---|---|",
        ];
        var cases =
            from truth in new (string Text, double? Off)[]
            {
                ("drawn from the prior", null), ("1 SD off", 1), ("2 SD off", 2), ("4 SD off", 4),
            }
            from width in new[] { Narrow, Wide }
            from n in new[] { 8, 12, 20, 40 }
            let answers = Run(n, LongRun.DataSets(2), width, truth.Off)
            select FormattableString.Invariant($"| {n} | {width} | {truth.Text} ")
                + $"| {LongRun.Percent(Share(answers, a => a.Holds))} % "
                + $"| {LongRun.Percent(Share(answers, a => a.HoldsOther))} % "
                + $"| {LongRun.Percent(Share(answers, a => a.Predicts))} % "
                + $"| {LongRun.Percent(Share(answers, a => a.Conflict))} % |";

        string[] lines = [.. head, .. cases];

        Assert.Equal(34, lines.Length);
        LongRun.Write("coverage-prior", lines);
    }

    private static Answer[] Run(int n, int dataSets, double width, double? off) =>
        LongRun.Simulate(dataSets, n, random =>
        {
            const double priorMean = 1;
            var truth = priorMean + (width * (off ?? Normal.Sample(random, 0, 1)));
            double[] coefficients = [2, truth, -0.5, 0, 0.3];
            double[] Draw(int count)
            {
                var values = new double[count];
                Normal.Samples(random, values, 0, 1);
                return values;
            }

            double Response(IReadOnlyList<double> row) =>
                row.Zip(coefficients, (x, b) => x * b).Sum() + Normal.Sample(random, 0, 1);
            var design = new Design([DesignColumn.Constant(n), .. Enumerable.Range(1, 4).Select(
                j => new DesignColumn($"x{j}", Draw(n)))]);
            var fit = PriorRegression.Fit(
                design,
                [.. Enumerable.Range(0, n).Select(i => Response(design.Row(i)))],
                [new NormalPrior("x1", priorMean, width)]).Value;
            double[] other = [1, .. Draw(4)];
            return new Answer(
                fit.Coefficients[1].Together.Interval(0.95).Contains(truth),
                fit.Coefficients[2].Together.Interval(0.95).Contains(coefficients[2]),
                fit.Prediction(other).Interval(0.95).Contains(Response(other)),
                fit.JointConflict.IsConflict);
        });

    private static double Share(Answer[] answers, Func<Answer, bool> holds) =>
        (double)answers.Count(holds) / answers.Length;

    /// <summary>Four standard deviations of a binomial share.</summary>
    private static double Margin(Answer[] answers) => 4 * Math.Sqrt(0.95 * 0.05 / answers.Length);

    private readonly record struct Answer(bool Holds, bool HoldsOther, bool Predicts, bool Conflict);
}
