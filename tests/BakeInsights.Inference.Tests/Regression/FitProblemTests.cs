using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What a fit says when the data can't carry it.</summary>
public class FitProblemTests
{
    private static readonly DesignColumn X = new("x", [1, 2, 3, 4, 5]);
    private static readonly double[] Y = [2, 1, 4, 3, 5];

    [Fact]
    public void Saturated_fit_needs_one_more_row() => IsRefused(
        new Design(DesignColumn.Constant(2), new DesignColumn("x", [1, 2])), [1, 2],
        FitProblemKind.TooFewRows, ["constant", "x"],
        "There are 2 rows for 2 columns, and at least 3 are needed.",
        "Add 1 or more rows, or leave columns out.");

    [Fact]
    public void Missing_number_is_told_by_column_and_row() => IsRefused(
        new Design(DesignColumn.Constant(5), new DesignColumn("z", [1, 2, double.NaN, 4, double.PositiveInfinity])), Y,
        FitProblemKind.MissingValue, ["z"],
        "Column z has no finite number in 2 of 5 rows, the first of them row 3.",
        "Give the missing numbers or leave these rows out.");

    [Fact]
    public void Missing_response_is_told_too() => IsRefused(
        new Design(X), [1, 2, 3, 4, double.NaN],
        FitProblemKind.MissingValue, ["response"],
        "Column response has no finite number in 1 of 5 rows, the first of them row 5.",
        "Give the missing numbers or leave these rows out.");

    [Theory]
    [InlineData(1e200)]
    [InlineData(1e-200)]
    public void Numbers_whose_squares_leave_the_range_are_refused(double unit) => IsRefused(
        new Design(new DesignColumn("x", [.. X.Values.Select(x => x * unit)])), Y,
        FitProblemKind.OutOfRange, ["x"],
        "The largest number of column x is not between 1e-75 and 1e75 in size, so that squares can't be computed.",
        "Express x in another unit.");

    [Fact]
    public void Multiple_of_one_column_is_named_with_it() => IsRefused(
        new Design(DesignColumn.Constant(5), X, new DesignColumn("tripled", [3, 6, 9, 12, 15])), Y,
        FitProblemKind.DependentColumn, ["tripled", "x"],
        "Column tripled is a multiple of x, so their effects can't be told apart.",
        "Leave out one of these columns, or add rows in which tripled varies by itself.");

    [Fact]
    public void Constant_and_an_indicator_of_every_group_depend_on_each_other()
    {
        var groups = GroupColumns.From("oven", ["a", "b", "c", "a", "b"], GroupCoding.EveryGroup);

        IsRefused(
            new Design([DesignColumn.Constant(5), .. groups]), Y,
            FitProblemKind.DependentColumn, ["oven = c", "constant", "oven = a", "oven = b"],
            "Column oven = c is a combination of constant, oven = a and oven = b, "
                + "so their effects can't be told apart.",
            "Leave out one of these columns, or add rows in which oven = c varies by itself.");
    }

    [Fact]
    public void Column_of_zeros_is_refused() => IsRefused(
        new Design(X, new DesignColumn("none", [0, 0, 0, 0, 0])), Y,
        FitProblemKind.DependentColumn, ["none"],
        "Column none is zero in every row.",
        "Leave none out, or add rows in which it is not zero.");

    [Fact]
    public void Constant_response_is_refused() => IsRefused(
        new Design(DesignColumn.Constant(5), X), [3, 3, 3, 3, 3],
        FitProblemKind.NoSpread, ["response"],
        "Column response is the same in every row, so there is nothing to explain.",
        "Add rows in which response differs.");

    [Fact]
    public void Constant_response_is_fitted_where_no_column_is_constant() =>
        Assert.True(LeastSquares.Fit(new Design(X), [3, 3, 3, 3, 3]).Succeeded);

    [Fact]
    public void Response_of_another_length_is_a_programming_error() => Throws(
        "The response has 2 rows and the design 5.", () => LeastSquares.Fit(new Design(X), [1, 2]));

    [Fact]
    public void Weights_of_another_number_are_a_programming_error() => Throws(
        "There are 2 weights for 1 columns.", () => LeastSquares.Fit(new Design(X), Y).Value.Combination([1, 2]));

    [Fact]
    public void Fits_that_are_not_nested_are_not_compared()
    {
        var design = new Design(DesignColumn.Constant(5), X);
        var small = LeastSquares.Fit(design.Select("x"), Y).Value;
        var large = LeastSquares.Fit(design, Y).Value;
        LeastSquaresFit With(double[] values) =>
            LeastSquares.Fit(new Design(DesignColumn.Constant(5), new DesignColumn("x", values)), Y).Value;

        Throws("The larger fit lacks column constant.", () => LeastSquares.Compare(large, small));
        Throws("The fits have the same columns.", () => LeastSquares.Compare(large, large));
        Throws("Column x differs between the fits.", () => LeastSquares.Compare(small, With([1, 2, 3, 4, 6])));
        Throws(
            "The fits are not of the same response in the same rows.",
            () => LeastSquares.Compare(LeastSquares.Fit(design.Select("x"), [1, 1, 4, 3, 5]).Value, large));
    }

    private static void IsRefused(
        Design design, double[] response, FitProblemKind kind, string[] columns, string message, string remedy)
    {
        Assert.False(LeastSquares.Fit(design, response).TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
        Assert.Equal(columns, problem.Columns);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
