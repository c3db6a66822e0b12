using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// What holds for every regression with prior knowledge, and what it says when the data can't carry it.
/// </summary>
public class PriorPropertyTests
{
    private static readonly Design Line = new(DesignColumn.Constant(6), new DesignColumn("x", [1, 2, 3, 4, 5, 6]));
    private static readonly double[] Y = [2.1, 3.4, 4.2, 4.9, 6.5, 6.9];

    [Fact]
    public void Prior_without_width_to_speak_of_is_the_answer_and_one_without_end_leaves_the_data_alone() =>
        RandomDesigns.Any.Sample((design, response) =>
        {
            var tight = PriorRegression.Fit(design, response, [new NormalPrior("x1", 0.5, 1e-9)]).Value;
            var loose = PriorRegression.Fit(design, response, [new NormalPrior("x1", 0.5, 1e9)]).Value;
            return Near(0.5, tight.Terms[1].Estimate) && tight.Terms[1].StandardError < 2e-9
                && loose.Coefficients.All(c =>
                    Near(c.DataAlone.Mean, c.Together.Mean)
                    && Near(c.DataAlone.Interval(0.9).Low, c.Together.Interval(0.9).Low)
                    && Near(c.DataAlone.Interval(0.9).High, c.Together.Interval(0.9).High))
                && loose.JointConflict.PValue > 0.99;
        }, iter: 10);

    [Fact]
    public void Both_together_lie_between_prior_and_data_for_one_coefficient() =>
        Gen.Select(RandomDesigns.Any, Gen.Double[-5, 5], Gen.Double[0.01, 5]).Sample((data, mean, deviation) =>
        {
            var c = PriorRegression.Fit(data.Design, data.Response, [new NormalPrior("x1", mean, deviation)])
                .Value.Coefficients[1];
            var (low, high) = (Math.Min(c.Prior!.Mean, c.DataAlone.Mean), Math.Max(c.Prior.Mean, c.DataAlone.Mean));
            return low <= c.Together.Mean && c.Together.Mean <= high
                && c.Together.StandardDeviation > 0
                && c.Conflict!.PValue is > 0 and <= 1
                && c.Together.Interval(0.9) is var inner && c.Together.Interval(0.99) is var outer
                && outer.Low < inner.Low && inner.Low < c.Together.Mean
                && c.Together.Mean < inner.High && inner.High < outer.High;
        }, iter: 10);

    [Theory]
    [InlineData(1e50, 1)]
    [InlineData(1e-50, 1e-30)]
    public void Units_do_not_matter(double unitOfX, double unitOfY)
    {
        var plain = PriorRegression.Fit(Line, Y, [new NormalPrior("x", 0.5, 0.2)]).Value;
        var scaled = PriorRegression.Fit(
            new Design(Line.Columns[0], new DesignColumn("x", [.. Line.Columns[1].Values.Select(x => x * unitOfX)])),
            [.. Y.Select(y => y * unitOfY)],
            [new NormalPrior("x", 0.5 * unitOfY / unitOfX, 0.2 * unitOfY / unitOfX)]).Value;

        Close.Relative(plain.Terms[1].Estimate * unitOfY / unitOfX, scaled.Terms[1].Estimate, 1e-10);
        Close.Relative(
            plain.Coefficients[0].Together.Interval(0.9).High * unitOfY,
            scaled.Coefficients[0].Together.Interval(0.9).High,
            1e-10);
        Close.Relative(plain.JointConflict.PValue, scaled.JointConflict.PValue, 1e-10);
    }

    [Fact]
    public void Prediction_is_wider_than_the_mean_and_both_are_centred_alike()
    {
        var fit = PriorRegression.Fit(Line, Y, [new NormalPrior("x", 0.5, 0.2)]).Value;

        var (mean, single) = (fit.Combination([1, 3]), fit.Prediction([1, 3]));

        Close.Relative(mean.Mean, single.Mean, 1e-12);
        Assert.True(single.Interval(0.9).Low < mean.Interval(0.9).Low);
        Assert.True(mean.Interval(0.9).High < single.Interval(0.9).High);
        Close.Relative(fit.Rows[2].Fitted, mean.Mean, 1e-12);
    }

    [Fact]
    public void Prior_far_from_the_data_is_told_in_the_caveats()
    {
        var fit = PriorRegression.Fit(
            Line, Y, [new NormalPrior("x", -5, 0.2), new NormalPrior("constant", 1, 1)]).Value;

        Assert.True(fit.Coefficients[1].Conflict!.IsConflict);
        Assert.False(fit.Coefficients[0].Conflict!.IsConflict);
        Assert.True(fit.JointConflict.IsConflict);
        Assert.Equal(3, fit.Caveats.Count);
        Assert.Matches(
            @"^The data disagree with the prior of x \(p = [0-9.E-]+\), so both together suit neither\.$",
            fit.Caveats[0]);
        Assert.StartsWith("The data disagree with the priors together (p = ", fit.Caveats[1]);
    }

    [Fact]
    public void Few_rows_are_told_in_the_caveats()
    {
        double[] x = [1, 2, 3, 4, 5, 6, 7, 8, 9];
        var design = new Design(DesignColumn.Constant(9), new DesignColumn("x", x));

        Assert.Equal(
            ["With 6 rows for 2 columns the intervals hold the truth a little less often than they say; 9 rows are "
                + "advised."],
            PriorRegression.Fit(Line, Y, [new NormalPrior("x", 1, 0.2)]).Value.Caveats);
        Assert.Empty(PriorRegression.Fit(design, [.. Y, 8, 8.5, 10], [new NormalPrior("x", 1, 0.2)]).Value.Caveats);
    }

    [Fact]
    public void Perfect_fit_leaves_nothing_to_weigh_with()
    {
        var problem = Problem(Line, [1, 2, 3, 4, 5, 6]);

        Assert.Equal(FitProblemKind.ZeroSpread, problem.Kind);
        Assert.Equal(["response", "constant", "x"], problem.Columns);
        Assert.Equal(
            "The columns meet the response in every row, so no spread is left to weigh the data against the prior "
                + "with.",
            problem.Message);
        Assert.Equal("Add rows, leave columns out, or measure the response more finely.", problem.Remedy);
    }

    [Fact]
    public void One_row_more_than_columns_is_not_enough()
    {
        var design = new Design(DesignColumn.Constant(3), new DesignColumn("x", [1, 2, 3]));

        var problem = Problem(design, [1, 2, 4]);

        Assert.Equal(FitProblemKind.TooFewRows, problem.Kind);
        Assert.Equal(
            "There are 3 rows for 2 columns, and at least 4 are needed to integrate the residual spread out.",
            problem.Message);
        Assert.Equal("Add 1 or more rows, or leave columns out.", problem.Remedy);
    }

    [Fact]
    public void Priors_of_columns_that_nearly_depend_on_each_other_are_refused()
    {
        var near = new DesignColumn("z", [.. Line.Columns[1].Values.Select((x, i) => x * (1 + (i % 2 * 1e-10)))]);

        var problem = PriorRegression.Fit(
            new Design([.. Line.Columns, near]), Y, [new NormalPrior("x", 1, 1), new NormalPrior("z", 1, 1)])
            .Match(_ => throw new InvalidOperationException("There is a fit."), p => p);

        Assert.Equal(FitProblemKind.DependentColumn, problem.Kind);
        Assert.Equal(["x", "z"], problem.Columns);
        Assert.Equal(
            "The columns with priors so nearly depend on each other that the data can't be weighed against each prior.",
            problem.Message);
        Assert.Equal(
            "State a prior of fewer of them, or add rows in which each varies by itself.", problem.Remedy);
    }

    [Fact]
    public void Problems_of_the_data_are_those_of_least_squares()
    {
        Assert.Equal(FitProblemKind.NoSpread, Problem(Line, [3, 3, 3, 3, 3, 3]).Kind);
        Assert.Equal(FitProblemKind.MissingValue, Problem(Line, [3, 3, 3, 3, 3, double.NaN]).Kind);
        Assert.Equal(
            FitProblemKind.DependentColumn,
            Problem(new Design([.. Line.Columns, new DesignColumn("z", [2, 4, 6, 8, 10, 12])]), Y).Kind);
    }

    [Fact]
    public void Programming_errors_throw()
    {
        var fit = PriorRegression.Fit(Line, Y, [new NormalPrior("x", 1, 0.2)]).Value;
        NormalPrior x = new("x", 1, 1);

        Throws("There is no prior; least squares is the fit without.", () => PriorRegression.Fit(Line, Y, []));
        Throws("Two priors are of one column.", () => PriorRegression.Fit(Line, Y, [x, x]));
        Throws("No column is named z", () => PriorRegression.Fit(Line, Y, [new NormalPrior("z", 1, 1)]));
        Throws("The prior of x needs a finite mean and a finite standard deviation above 0.",
            () => new NormalPrior("x", 1, 0));
        Throws("There are 1 weights for 2 columns.", () => fit.Combination([1]));
        Throws("All weights are zero.", () => fit.Combination([0, 0]));
    }

    private static FitProblem Problem(Design design, double[] y) =>
        PriorRegression.Fit(design, y, [new NormalPrior("x", 1, 1)])
            .Match(_ => throw new InvalidOperationException("There is a fit."), p => p);

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= 1e-6 * (1 + Math.Abs(first) + Math.Abs(second));

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
