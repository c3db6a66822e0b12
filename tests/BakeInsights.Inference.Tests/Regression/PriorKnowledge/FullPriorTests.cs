using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Expected values by R with tests/reference-data/r/full-prior.R, and least squares.</summary>
public class FullPriorTests
{
    private const double Tolerance = 1e-8;

    private static readonly NormalPrior[] Priors = [new("constant", 20, 8), new("speed", 3.2, 0.8)];
    private static readonly SpreadPrior Spread = new(10, 2);

    public static IEnumerable<object[]> Names => HardCases.Names;

    [Theory]
    [InlineData("none", 0)]
    [InlineData("one", 1)]
    [InlineData("four", 4)]
    [InlineData("all", 50)]
    public void Stopping_distances_have_the_expected_beliefs(string @case, int rows)
    {
        var fit = Fit(rows, Priors);
        var table = ReferenceTable.Read("r/full-prior-expected.csv");
        var names = table.Texts("case").Zip(table.Texts("quantity")).ToList();
        double Expected(string quantity) => table.Numbers("value")[names.IndexOf((@case, quantity))];

        foreach (var (name, belief) in new[]
        {
            ("constant", fit.Coefficient(0)), ("speed", fit.Coefficient(1)), ("new", fit.Prediction([1, 5])),
        })
        {
            Close.Relative(Expected(name + " mean"), belief.Mean, Tolerance);
            Close.Relative(Expected(name + " SD"), belief.StandardDeviation, Tolerance);
            Close.Relative(Expected(name + " low"), belief.Interval(0.95).Low, Tolerance);
            Close.Relative(Expected(name + " high"), belief.Interval(0.95).High, Tolerance);
        }

        var inverse = fit.ValueFor(1, [1, 0], 45, 0.95);
        Close.Relative(Expected("inverse"), inverse.Estimate + 10, Tolerance);
        Close.Relative(Expected("inverse low"), inverse.Low + 10, Tolerance);
        Close.Relative(Expected("inverse high"), inverse.High + 10, Tolerance);
        Close.Relative(Expected("spread"), fit.Summary.ResidualStandardDeviation, Tolerance);
        Assert.Equal(rows, fit.Summary.RowCount);
        Assert.Equal(rows, fit.Rows.Count);
        Assert.All(fit.Rows, row => Close.Absolute(row.Observed!.Value, row.Fitted + row.Residual!.Value, 1e-9));
    }

    [Fact]
    public void Wide_priors_leave_least_squares()
    {
        var data = ReferenceTable.Read("r/full-prior.csv");
        var alone = LeastSquares.Fit(
            new Design(DesignColumn.Constant(50), new DesignColumn("speed", [.. data.Numbers("speed").Select(v => v - 10)])),
            data.Numbers("distance")).Value;
        var fit = Fit(50, [new("constant", 0, 1e4), new("speed", 0, 1e4)]);

        // The response's own spread weighs with the spread's prior, which moves the SD by a hundredth or so.
        for (var j = 0; j < 2; j++)
        {
            Close.Relative(alone.Terms[j].Estimate, fit.Coefficient(j).Mean, 1e-5);
            Close.Relative(alone.Terms[j].StandardError, fit.Coefficient(j).StandardDeviation, 0.05);
        }
    }

    [Fact]
    public void Columns_that_data_can_not_tell_apart_stay_as_far_apart_as_the_prior_has_them()
    {
        NormalPrior[] priors = [new("one", 1, 0.5), new("same", 2, 0.5)];
        var fit = FullPriorRegression.Fit(
            priors, new SpreadPrior(0.1, 2), [.. Enumerable.Range(0, 40).Select(i => new[] { i / 10.0, i / 10.0 })],
            [.. Enumerable.Range(0, 40).Select(i => 0.4 * i + (i % 2 * 0.1))]).Value;

        // The sum is learned, the difference of 1 +- sqrt(0.5) is not.
        var difference = fit.Combination([-1, 1]);
        Close.Relative(1, difference.Mean, 1e-6);
        Close.Relative(Math.Sqrt(0.5), difference.StandardDeviation, 1e-6);
        Assert.InRange(fit.Combination([1, 1]).StandardDeviation!.Value, 0, 0.02);
    }

    [Fact]
    public void A_slope_that_may_be_zero_leaves_the_value_without_ends()
    {
        var fit = FullPriorRegression.Fit([new("constant", 0, 1), new("slope", 0.1, 1)], Spread, [], []).Value;

        var value = fit.ValueFor(1, [1, 0], 5, 0.95);

        Assert.Null(value.Low);
        Assert.Null(value.High);
    }

    [Fact]
    public void A_falling_line_has_its_value_too()
    {
        var fit = FullPriorRegression.Fit([new("constant", 10, 0.1), new("slope", -2, 0.1)], Spread, [], []).Value;

        var value = fit.ValueFor(1, [1, 0], 4, 0.95);

        Close.Absolute(3, value.Estimate ?? 0, 1e-9);
        Assert.True(value.Low < 3 && 3 < value.High);
    }

    [Theory]
    [InlineData(double.NaN, 1, FitProblemKind.MissingValue)]
    [InlineData(1, double.PositiveInfinity, FitProblemKind.MissingValue)]
    [InlineData(1e200, 1, FitProblemKind.OutOfRange)]
    [InlineData(1, 1e200, FitProblemKind.OutOfRange)]
    public void Numbers_that_can_not_be_used_are_a_problem(double x, double y, FitProblemKind kind)
    {
        Assert.False(FullPriorRegression.Fit([new("slope", 1, 1)], Spread, [[x]], [y]).TryGet(out _, out var problem));

        Assert.Equal(kind, problem.Kind);
        Contract.Told(problem);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Hard_cases_give_finite_numbers_or_a_problem(string name) => Contract.Keeps(name, (design, response) =>
        FullPriorRegression.Fit(
            [.. design.Names.Select(column => new NormalPrior(column, 0.5, 2))],
            Spread,
            [.. Enumerable.Range(0, design.RowCount).Select(design.Row)],
            response).Select<IFit>(fit => fit));

    [Fact]
    public void Arguments_that_do_not_fit_together_are_programming_errors()
    {
        Assert.Throws<ArgumentException>(() => FullPriorRegression.Fit([], Spread, [], []));
        Assert.Throws<ArgumentException>(() => FullPriorRegression.Fit([new("a", 0, 1), new("a", 0, 1)], Spread, [], []));
        Assert.Throws<ArgumentException>(() => FullPriorRegression.Fit([new("a", 0, 1)], Spread, [[1, 2]], [1]));
        Assert.Throws<ArgumentException>(() => FullPriorRegression.Fit([new("a", 0, 1)], Spread, [[1]], []));
        Assert.Throws<ArgumentException>(() => new SpreadPrior(0, 2));
        Assert.Throws<ArgumentException>(() => new SpreadPrior(1, 1));
        var fit = Fit(4, Priors);
        Assert.Throws<ArgumentException>(() => fit.Combination([1]));
        Assert.Throws<ArgumentException>(() => fit.Prediction([0, 0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.ValueFor(1, [1, 0], 4, 1));
    }

    private static FullPriorFit Fit(int rows, NormalPrior[] priors)
    {
        var data = ReferenceTable.Read("r/full-prior.csv");
        return FullPriorRegression.Fit(
            priors,
            Spread,
            [.. data.Numbers("speed").Take(rows).Select(speed => new[] { 1, speed - 10 })],
            [.. data.Numbers("distance").Take(rows)]).Value;
    }
}
