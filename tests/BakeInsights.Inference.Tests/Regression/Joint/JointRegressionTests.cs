using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class JointRegressionTests
{
    private const int Draws = 8_000;
    private const int Seed = 3;

    [Fact]
    public void Chance_of_one_response_without_priors_is_that_of_students_t()
    {
        // Written by tests/reference-data/r/joint.R, from cars.csv.
        var expected = ReferenceTable.Read("r/joint-expected.csv");
        var cars = ReferenceTable.Read("r/cars.csv");
        var response = new JointResponse(
            "distance", new Design(DesignColumn.Constant(cars.RowCount), cars.Column("speed")), cars.Numbers("distance"), [.. Enumerable.Range(0, cars.RowCount)]);
        var draws = JointRegression.Draw([response], Draws, Seed).Value;

        for (var row = 0; row < expected.RowCount; row++)
        {
            double[] at = [1, expected.Numbers("speed")[row]];
            var below = draws.Probabilities([at], [new Interval(double.NegativeInfinity, expected.Numbers("limit")[row])]).Average();

            // Four standard errors of the mean over the draws, by draw a few hundredths apart.
            Assert.Equal(expected.Numbers("below")[row], below, 4 * 0.1 / Math.Sqrt(Draws));
        }
    }

    [Fact]
    public void Two_results_that_are_nearly_one_are_met_together_as_often_as_the_rarer_of_them()
    {
        var (design, first) = Made(40, 1);
        var noise = new Random(2);
        double[] second = [.. first.Select(value => value + (0.01 * Normal.Sample(noise, 0, 1)))];
        var draws = Draw(Of("first", design, first), Of("second", design, second));
        double[] at = [1, 0.5];
        Interval[] both = [new(double.NegativeInfinity, 3), new(double.NegativeInfinity, 2.5)];
        var together = draws.Probabilities([at, at], both).Average();
        var rarer = draws.Probabilities([at, at], [Anything, both[1]]).Average();

        Assert.InRange(draws.CorrelationsOf(0, 1).Average(), 0.99, 1);
        Assert.Equal(rarer, together, 0.01);
    }

    [Fact]
    public void Two_results_that_have_nothing_to_do_with_each_other_are_met_together_as_their_product()
    {
        var (design, first) = Made(60, 1);
        var (_, second) = Made(60, 2);
        var draws = Draw(Of("first", design, first), Of("second", design, second));
        double[] at = [1, 0.5];
        Interval[] both = [new(double.NegativeInfinity, 2.5), new(2, double.PositiveInfinity)];
        var together = draws.Probabilities([at, at], both).Average();
        var product = draws.Probabilities([at, at], [both[0], Anything]).Average() * draws.Probabilities([at, at], [Anything, both[1]]).Average();

        // A sample correlation of 60 rows lies within 0.3 of nothing, and moves the chance of both by less than 0.08.
        Assert.InRange(draws.CorrelationsOf(0, 1).Average(), -0.3, 0.3);
        Assert.Equal(product, together, 0.08);
    }

    [Fact]
    public void Rows_that_lack_the_other_result_still_count_for_their_own()
    {
        var (design, first) = Made(40, 1);
        int[] some = [.. Enumerable.Range(0, 40).Where(row => row % 3 != 0)];
        var (whole, second) = Made(40, 2);
        var less = new JointResponse(
            "second", new Design(whole.Columns.Select(column => new DesignColumn(column.Name, [.. some.Select(row => column.Values[row])]))),
            [.. some.Select(row => second[row])], some);
        var draws = Draw(Of("first", design, first), less);
        var (one, other) = (LeastSquares.Fit(design, first).Value, LeastSquares.Fit(less.Design, [.. less.Values]).Value);

        // Another result can move an estimate, by less than its standard error here.
        for (var column = 0; column < 2; column++)
        {
            Assert.Equal(one.Terms[column].Estimate, draws.MeanOf(0, column), one.Terms[column].StandardError);
            Assert.Equal(other.Terms[column].Estimate, draws.MeanOf(1, column), other.Terms[column].StandardError);
        }

        Assert.Equal(one.ResidualStandardDeviation, draws.SpreadsOf(0).Average(), 0.1 * one.ResidualStandardDeviation);
    }

    [Fact]
    public void A_prior_that_fits_draws_the_coefficient_towards_it_and_one_that_does_not_gives_way()
    {
        var (design, values) = Made(8, 5);
        var alone = LeastSquares.Fit(design, values).Value.Terms[1];
        double With(double mean) => Draw(Of("first", design, values) with { Priors = [[new NormalPrior("x", mean, 0.1)]] }).MeanOf(0, 1);

        var near = alone.Estimate + alone.StandardError;
        Assert.InRange(With(near), alone.Estimate, near);
        Assert.True(With(near) - alone.Estimate > 0.3 * alone.StandardError);
        Assert.True(Math.Abs(With(alone.Estimate + (20 * alone.StandardError)) - alone.Estimate) < 3 * alone.StandardError);
    }

    [Fact]
    public void Columns_that_happen_widen_what_may_come()
    {
        var (design, values) = Made(40, 1);
        var group = new DesignColumn("group", [.. Enumerable.Range(0, 40).Select(row => row % 2 == 0 ? 1.0 : -1)]);
        var grouped = new Design([.. design.Columns, group]);
        double[] apart = [.. values.Select((value, row) => value + (5 * group.Values[row]))];
        var held = Draw(Of("first", grouped, apart));
        var happens = Draw(Of("first", grouped, apart) with { Varying = ["group"] });
        double[] at = [1, 0, 0];

        // Between the two groups, five above and below, hardly anything comes.
        Interval[] middle = [new(1 - 3, 1 + 3)];
        Assert.True(held.Probabilities([at], middle).Average() > 0.9);
        Assert.True(happens.Probabilities([at], middle).Average() < 0.1);
    }

    [Fact]
    public void The_same_seed_gives_the_same_draws()
    {
        var (design, values) = Made(12, 1);
        double[] Chances(int seed) =>
            JointRegression.Draw([Of("first", design, values)], 50, seed).Value.Probabilities([new double[] { 1, 0 }], [new Interval(0, 2)]);
        Assert.Equal(Chances(1), Chances(1));
        Assert.NotEqual(Chances(1), Chances(2));
    }

    [Fact]
    public void What_can_not_be_fitted_is_a_problem()
    {
        var (design, _) = Made(12, 1);
        double[] line = [.. design.Columns[1].Values.Select(x => 2 * x)];
        Assert.False(JointRegression.Draw([Of("line", design, line)], 10, 1).TryGet(out _, out var problem));
        Contract.Told(problem);
        Assert.Equal(FitProblemKind.ZeroSpread, problem.Kind);
        Assert.False(JointRegression.Draw([Of("missing", design, [double.NaN, .. line.Skip(1)])], 10, 1).TryGet(out _, out problem));
        Contract.Told(problem);
    }

    [Fact]
    public void What_does_not_fit_together_is_refused()
    {
        var (design, values) = Made(12, 1);
        Assert.Throws<ArgumentException>(() => JointRegression.Draw([], 10, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => JointRegression.Draw([Of("first", design, values)], 0, 1));
        Assert.Throws<ArgumentException>(() => new JointResponse("first", design, values, [.. Enumerable.Repeat(0, 12)]));
        Assert.Throws<ArgumentException>(() => new JointResponse("first", design, [1], [0]));
        var draws = JointRegression.Draw([Of("first", design, values)], 10, 1).Value;
        Assert.Throws<ArgumentException>(() => draws.Probabilities([new double[] { 1 }], [Anything]));
        Assert.Throws<ArgumentException>(() => draws.Probabilities([], []));
    }

    private static Interval Anything => new(double.NegativeInfinity, double.PositiveInfinity);

    private static JointDraws Draw(params JointResponse[] responses) => JointRegression.Draw(responses, Draws, Seed).Value;

    private static JointResponse Of(string name, Design design, IReadOnlyList<double> values) => new(name, design, values, [.. Enumerable.Range(0, values.Count)]);

    // 1 + 2 x and a standard normal error.
    private static (Design Design, double[] Values) Made(int rows, int seed)
    {
        var random = new Random(seed);
        double[] x = [.. Enumerable.Range(0, rows).Select(row => ((double)row / rows) - 0.5)];
        return (new Design(DesignColumn.Constant(rows), new DesignColumn("x", x)), [.. x.Select(value => 1 + (2 * value) + Normal.Sample(random, 0, 1))]);
    }
}
