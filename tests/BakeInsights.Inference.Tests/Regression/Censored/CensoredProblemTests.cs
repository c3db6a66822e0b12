using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What a censored fit says when the data can't carry it.</summary>
public class CensoredProblemTests
{
    private static readonly double[] X = [1, 2, 3, 4, 5];
    private static readonly Design Line = new(DesignColumn.Constant(5), new DesignColumn("x", X));
    private static readonly CensoredValue[] Wide =
        [Between(40, 60), Between(30, 50), Between(50, 70), Between(20, 40), Between(60, 90)];

    [Fact]
    public void Missing_bound_is_told_by_row() => IsRefused(
        Line, [.. Wide[..3], CensoredValue.Above(double.NaN), Between(30, double.PositiveInfinity)],
        FitProblemKind.MissingValue, ["response"],
        "Column response has a bound that is no finite number in 2 of 5 rows, the first of them row 4.",
        "Give the missing numbers, say that a bound is unknown, or leave these rows out.");

    [Theory]
    [InlineData(-5, 10)]
    [InlineData(-5, -1)]
    [InlineData(0, 0)]
    public void Value_that_is_not_positive_is_told_by_row(double low, double high) => IsRefused(
        Line, [.. Wide[..4], Between(low, high)],
        FitProblemKind.ImpossibleValue, ["response"],
        "Column response is not a positive number in row 5.",
        "Only positive values have a logarithm: correct it or leave the row out.");

    [Fact]
    public void Interval_that_ends_before_it_begins_is_told_by_row() => IsRefused(
        Line, [Between(60, 40), .. Wide[1..]],
        FitProblemKind.ImpossibleValue, ["response"],
        "Column response ends before it begins in row 1.", "Correct the two bounds.");

    [Fact]
    public void Row_without_bounds_says_nothing() => IsRefused(
        Line, [Wide[0], CensoredValue.Above(0), .. Wide[2..]],
        FitProblemKind.ImpossibleValue, ["response"],
        "Column response says nothing in row 2.", "Give a bound or leave the row out.");

    [Fact]
    public void All_censored_to_the_right_is_refused() => IsRefused(
        Line, [.. X.Select(x => CensoredValue.Above(x))],
        FitProblemKind.NoSpread, ["response"],
        "The response is known only to lie above its bound in every row, so nothing says how it depends on the "
            + "columns.",
        "Add rows with a known value, or with bounds on both sides.");

    [Fact]
    public void All_censored_to_the_left_is_refused() => IsRefused(
        Line, [.. X.Select(x => CensoredValue.Below(x))],
        FitProblemKind.NoSpread, ["response"],
        "The response is known only to lie below its bound in every row, so nothing says how it depends on the "
            + "columns.",
        "Add rows with a known value, or with bounds on both sides.");

    public static TheoryData<string> CasesThatTheModelMeets => new("wide looks", "exact values", "one value", "narrow");

    [Theory]
    [MemberData(nameof(CasesThatTheModelMeets))]
    public void Model_that_meets_every_row_has_no_spread(string @case)
    {
        CensoredValue[] response = @case switch
        {
            "wide looks" => [.. X.Select(x => Between(Math.Exp(x / 3) * 0.8, Math.Exp(x / 3) * 1.3))],
            "exact values" => [.. X[..4].Select(x => CensoredValue.Exact(Math.Exp(2 + x))), CensoredValue.Above(9)],
            "one value" => [.. X.Select(_ => Between(30, 60))],
            _ => [.. X.Select(x => CensoredValue.Exact(Math.Exp(2 + x)))],
        };

        IsRefused(
            Line, response, FitProblemKind.ZeroSpread, ["response", "constant", "x"],
            "The 2 columns meet the response in every row, so no spread is left to measure uncertainty with.",
            "Add rows, leave columns out, or look more often.");
    }

    [Fact]
    public void Group_of_which_all_rows_are_censored_to_one_side_has_no_finite_effect()
    {
        var design = new Design(DesignColumn.Constant(6), new DesignColumn("cold", [0, 0, 0, 0, 1, 1]));

        IsRefused(
            design, [Between(40, 60), Between(70, 90), CensoredValue.Exact(50), Between(30, 45),
                CensoredValue.Above(200), CensoredValue.Above(300)],
            FitProblemKind.Separation, ["cold"],
            "The rows whose response has no upper or no lower bound are told from the others by cold without error, "
                + "so the effects have no finite estimate.",
            "Add rows with known bounds on both sides there, or leave a column out.");
    }

    [Fact]
    public void Design_problems_are_those_of_least_squares()
    {
        var dependent = new Design(DesignColumn.Constant(5), new DesignColumn("level", [3, 3, 3, 3, 3]));
        var missing = new Design(new DesignColumn("x", [1, 2, double.NaN, 4, 5]));
        var wide = new Design([DesignColumn.Constant(5), .. Enumerable.Range(1, 4).Select(
            k => new DesignColumn($"x{k}", [.. X.Select(x => Math.Pow(x, k))]))]);

        Assert.Equal(FitProblemKind.DependentColumn, Problem(dependent, Wide).Kind);
        Assert.Equal(FitProblemKind.MissingValue, Problem(missing, Wide).Kind);
        Assert.Equal(FitProblemKind.TooFewRows, Problem(wide, Wide).Kind);
    }

    [Fact]
    public void Few_rows_are_told_in_the_caveats() => Assert.Equal(
        ["With 5 rows the likelihood of censored values is far from its large-sample shape: effects may be overstated, "
            + "and 20 rows are advised.",
            "With 5 rows the interval of a new response is too narrow by maximum likelihood; 40 are advised."],
        CensoredLogNormal.Fit(Line, Wide).Value.Caveats);

    [Fact]
    public void Programming_errors_throw()
    {
        var fit = CensoredLogNormal.Fit(Line, Wide).Value;

        Throws("The response has 4 rows and the design 5.", () => CensoredLogNormal.Fit(Line, Wide[..4]));
        Throws("There are 3 weights for 2 columns.", () => fit.Combination([1, 2, 3]));
        Throws("All weights are zero.", () => fit.CombinationInterval([0, 0], 0.95));
        Throws("A level lies between 0 and 1", () => fit.Interval(1, 1));
    }

    private static CensoredValue Between(double low, double high) => CensoredValue.Between(low, high);

    private static FitProblem Problem(Design design, CensoredValue[] response) =>
        CensoredLogNormal.Fit(design, response).Match(_ => throw new InvalidOperationException(), p => p);

    private static void IsRefused(
        Design design, CensoredValue[] response, FitProblemKind kind, string[] columns, string message, string remedy)
    {
        var problem = Problem(design, response);
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
        Assert.Equal(columns, problem.Columns);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
