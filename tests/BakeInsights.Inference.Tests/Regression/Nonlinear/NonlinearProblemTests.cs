using CsCheck;
using Xunit;
using static System.Math;

namespace BakeInsights.Inference.Tests;

/// <summary>What a nonlinear fit says when the data can't carry it, and what holds for every fit.</summary>
public class NonlinearProblemTests
{
    private static readonly double[] X = [1, 2, 3, 4, 5, 6];
    private static readonly double[] Y = [2.1, 3.4, 4.2, 4.9, 5.1, 5.4];
    private static readonly Design Predictor = new(new DesignColumn("x", X));
    private static readonly NonlinearModel Rise = new(["top", "rate"], (b, x) => b[0] * (1 - Exp(-b[1] * x[0])));

    [Fact]
    public void Missing_number_is_told_by_column()
    {
        IsRefused(
            Rise, new Design(new DesignColumn("x", [1, double.NaN, 3, 4, 5, 6])), Y, [5, 1],
            FitProblemKind.MissingValue, ["x"],
            "Column x has no finite number in 1 of 6 rows, the first of them row 2.",
            "Give the missing numbers or leave these rows out.");
        Assert.Equal(
            "response", Problem(Rise, Predictor, [.. Y[..5], double.NaN], [5, 1]).Columns[0]);
    }

    [Fact]
    public void No_more_rows_than_parameters_are_refused() => IsRefused(
        Rise, new Design(new DesignColumn("x", [1, 2])), [1, 2], [5, 1],
        FitProblemKind.TooFewRows, ["top", "rate"],
        "There are 2 rows for 2 parameters, and at least 3 are needed.",
        "Add 1 or more rows, or take a simpler model.");

    [Fact]
    public void Start_without_a_value_is_refused() => IsRefused(
        Rise, Predictor, Y, [1, -1000],
        FitProblemKind.ImpossibleValue, ["top", "rate"],
        "At the start the model has no finite value in some row, or one whose square can't be computed.",
        "Start from other parameters, or express the data in another unit.");

    [Fact]
    public void Parameters_that_only_act_together_are_not_determined() => IsRefused(
        new NonlinearModel(["a", "b", "rate"], (b, x) => (b[0] + b[1]) * (1 - Exp(-b[2] * x[0]))),
        Predictor, Y, [2, 3, 1],
        FitProblemKind.NoConvergence, ["b"],
        "Where the search ended, b isn't determined: it, or it together with others, can change without changing "
            + "the fit.",
        "Start closer to the solution, give more rows where the parameters matter, or take a simpler model.");

    [Fact]
    public void Predictor_that_is_the_same_in_every_row_does_not_determine_a_curve() => Assert.Equal(
        FitProblemKind.NoConvergence,
        Problem(Rise, new Design(new DesignColumn("x", [2, 2, 2, 2, 2, 2])), Y, [5, 1]).Kind);

    [Fact]
    public void Sum_of_squares_that_falls_for_ever_is_not_taken_for_a_fit() => IsRefused(
        new NonlinearModel(["b"], (b, x) => Exp(-b[0]) + (0 * x[0])), Predictor, [-1, -1, -1, -1, -1, -2], [0],
        FitProblemKind.NoConvergence, ["b"],
        "Where the search ended, b isn't determined: it, or it together with others, can change without changing "
            + "the fit.",
        "Start closer to the solution, give more rows where the parameters matter, or take a simpler model.");

    [Fact]
    public void Profile_end_that_the_rows_do_not_bound_is_null()
    {
        // All but one row lie where the curve is flat: any higher rate fits about as well.
        var fit = NonlinearLeastSquares.Fit(
            Rise, new Design(new DesignColumn("x", [1, 8, 9, 10, 11, 12])), [4.9, 5.1, 4.9, 5.05, 4.95, 5.0], [5, 2])
            .Value;

        var interval = fit.Interval(1, 0.95);

        Assert.NotNull(interval.Low);
        Assert.Null(interval.High);
        Assert.True(interval.Contains(1e9));
    }

    [Fact]
    public void Programming_errors_throw()
    {
        var fit = NonlinearLeastSquares.Fit(Rise, Predictor, Y, [5, 1]).Value;

        Throws("The response has 2 rows and the predictors 6.",
            () => NonlinearLeastSquares.Fit(Rise, Predictor, [1, 2], [5, 1]));
        Throws("The start has 1 values and the model 2 parameters.",
            () => NonlinearLeastSquares.Fit(Rise, Predictor, Y, [5]));
        Throws("A model needs at least one parameter, each with a name.",
            () => new NonlinearModel([], (_, _) => 0));
        Throws("Two parameters are named a.", () => new NonlinearModel(["a", "a"], (_, _) => 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.Interval(2, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.Covariance(-1, 0));
        Assert.Equal(
            "The model gives 1 slopes for 2 parameters.",
            Assert.Throws<InvalidOperationException>(() => NonlinearLeastSquares.Fit(
                new NonlinearModel(["a", "b"], (b, x) => b[0], (_, _) => [1]), Predictor, Y, [5, 1])).Message);
    }

    [Fact]
    public void Model_that_is_linear_gives_the_linear_fit_and_Students_intervals() =>
        RandomDesigns.Any.Sample((design, response) =>
        {
            var names = design.Names.Select((_, j) => $"b{j}");
            var model = new NonlinearModel(names, (b, x) => b.Zip(x, (c, v) => c * v).Sum());
            var linear = LeastSquares.Fit(design, response).Value;

            var fit = NonlinearLeastSquares.Fit(model, design, response, [.. design.Names.Select(_ => 1.0)]).Value;

            return fit.Terms.Zip(linear.Terms).All(pair =>
                Near(pair.First.Estimate, pair.Second.Estimate)
                && Near(pair.First.StandardError, pair.Second.StandardError))
                && Near(fit.Interval(1, 0.9).Low!.Value, linear.Terms[1].Interval(0.9).Low)
                && Near(fit.Covariance(0, 1), linear.Covariance(0, 1))
                && fit.Rows.Zip(linear.Leverage).All(pair => Near(pair.First.Leverage!.Value, pair.Second));
        }, iter: 100);

    [Theory]
    [InlineData(1e60, 1e-60)]
    [InlineData(1e-60, 1e60)]
    public void Units_do_not_matter(double unitOfX, double unitOfY)
    {
        var plain = NonlinearLeastSquares.Fit(Rise, Predictor, Y, [5, 1]).Value;

        var scaled = NonlinearLeastSquares.Fit(
            Rise,
            new Design(new DesignColumn("x", [.. X.Select(x => x * unitOfX)])),
            [.. Y.Select(y => y * unitOfY)],
            [5 * unitOfY, 1 / unitOfX]).Value;

        Close.Relative(plain.Terms[0].Estimate * unitOfY, scaled.Terms[0].Estimate, 1e-9);
        Close.Relative(plain.Terms[1].StandardError / unitOfX, scaled.Terms[1].StandardError, 1e-9);
        Close.Relative(plain.Interval(1, 0.95).High!.Value / unitOfX, scaled.Interval(1, 0.95).High, 1e-6);
    }

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= 1e-6 * (1 + Math.Abs(first) + Math.Abs(second));

    private static FitProblem Problem(NonlinearModel model, Design design, double[] y, double[] start) =>
        NonlinearLeastSquares.Fit(model, design, y, start)
            .Match(_ => throw new InvalidOperationException("There is a fit."), p => p);

    private static void IsRefused(
        NonlinearModel model, Design design, double[] y, double[] start,
        FitProblemKind kind, string[] columns, string message, string remedy)
    {
        var problem = Problem(model, design, y, start);
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
        Assert.Equal(columns, problem.Columns);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
