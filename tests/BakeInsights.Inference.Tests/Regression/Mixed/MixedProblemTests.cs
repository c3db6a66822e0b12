using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>What a mixed model says when the data can't carry it.</summary>
public class MixedProblemTests
{
    private static readonly string[] Labels = ["a", "a", "a", "b", "b", "b", "c", "c", "c"];
    private static readonly double[] Y = [1, 2, 4, 2, 4, 3, 6, 5, 8];
    private static readonly DesignColumn X = new("x", [1, 2, 3, 1, 2, 3, 1, 2, 4]);

    [Fact]
    public void One_group_has_no_spread_between_groups() => IsRefused(
        Columns(), Y, ["a", "a", "a", "a", "a", "a", "a", "a", "a"], null,
        FitProblemKind.TooFewGroups, ["day"],
        "All rows belong to one group of day, so a spread between groups can't be estimated.",
        "Add rows of other groups of day, or fit by least squares.");

    [Fact]
    public void One_row_a_group_leaves_nothing_within_groups() => IsRefused(
        Columns(), Y, ["a", "b", "c", "d", "e", "f", "g", "h", "i"], null,
        FitProblemKind.TooFewRows, ["day"],
        "Once each group of day has its own level, no row is left over to estimate the spread within groups from.",
        "Add 1 or more rows to groups that are there.");

    [Fact]
    public void Two_rows_a_group_leave_nothing_beside_a_slope_by_group() => IsRefused(
        new Design(DesignColumn.Constant(6), new DesignColumn("x", [1, 2, 1, 3, 2, 5])), [1, 3, 2, 4, 3, 7],
        ["a", "a", "b", "b", "c", "c"], "x",
        FitProblemKind.TooFewRows, ["day"],
        "Once each group of day has its own level and slope, no row is left over to estimate the spread within groups "
            + "from.",
        "Add 1 or more rows to groups that are there.");

    [Fact]
    public void Columns_that_tell_groups_apart_leave_nothing_between_groups() => IsRefused(
        new Design(GroupColumns.From("day", Labels, GroupCoding.EveryGroup)), Y, Labels, null,
        FitProblemKind.TooFewGroups, ["day"],
        "The columns by themselves tell all groups of day apart, so nothing is left to estimate the spread between "
            + "groups from.",
        "Add groups of day, or leave out columns that are the same throughout each group.");

    [Fact]
    public void Groups_without_spread_inside_are_told() => IsRefused(
        Columns(), [1, 1, 1, 2, 2, 2, 5, 5, 5], Labels, null,
        FitProblemKind.NoSpread, ["response", "day"],
        "Within the groups of day the columns explain response entirely, so there is no spread within groups to "
            + "compare with.",
        "Add rows in which response varies within a group.");

    [Fact]
    public void Slope_of_a_column_that_is_constant_in_each_group_is_told() => IsRefused(
        new Design(DesignColumn.Constant(9), new DesignColumn("oven", [1, 1, 1, 2, 2, 2, 4, 4, 4])), Y, Labels, "oven",
        FitProblemKind.DependentColumn, ["oven", "day"],
        "Column oven is the same in all rows of each group of day, so groups' slopes can't be estimated.",
        "Leave the slope by group out, or add rows in which oven varies within groups.");

    [Fact]
    public void Problems_of_least_squares_are_problems_here_too()
    {
        var attempt = MixedModel.Fit(
            new Design(DesignColumn.Constant(9), X, new DesignColumn("twice", [.. X.Values.Select(v => 2 * v)])),
            Y, "day", Labels);

        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.DependentColumn, problem.Kind);
    }

    [Fact]
    public void Missing_response_is_a_problem_and_not_a_fit() => Assert.False(
        MixedModel.Fit(Columns(), [1, double.NaN, 4, 2, 4, 3, 6, 5, 8], "day", Labels).Succeeded);

    [Fact]
    public void Two_groups_are_fitted_with_a_caveat()
    {
        string[] labels = ["a", "a", "a", "a", "b", "b", "b", "b", "b"];

        var fit = MixedModel.Fit(new Design(DesignColumn.Constant(9), X), Y, "day", labels).Value;

        Assert.Contains(
            "There are 2 groups; with fewer than 5 the variance between them is hardly known, and intervals can be too "
                + "narrow.",
            fit.Caveats);
    }

    [Fact]
    public void Column_across_few_groups_beside_slopes_is_told() => Assert.Equal(
        "There are 14 groups; beside slopes by group and with fewer than 40, intervals of columns that are the same "
            + "throughout each group, such as altitude, are too narrow.",
        Assert.Single(MixedCases.Fit("unequal slope", MixedCriterion.Restricted).Caveats));

    [Fact]
    public void Labels_that_do_not_fit_are_a_programming_error()
    {
        Throws("There are 2 labels of day and 9 rows.", () => MixedModel.Fit(Columns(), Y, "day", ["a", "b"]));
        Throws(
            "Every row needs a label of day: leave unlabelled rows out.",
            () => MixedModel.Fit(Columns(), Y, "day", ["a", "b", "", "a", "b", "c", "a", "b", "c"]));
        Throws("No column is named z", () => MixedModel.Fit(Columns(), Y, "day", Labels, "z"));
        Throws(
            "There are 2 weights for 1 columns.",
            () => MixedModel.Fit(Columns(), Y, "day", Labels).Value.Combination([1, 2]));
    }

    private static Design Columns() => new(DesignColumn.Constant(9));

    private static void IsRefused(
        Design design, double[] response, string[] labels, string? slope,
        FitProblemKind kind, string[] columns, string message, string remedy)
    {
        Assert.False(MixedModel.Fit(design, response, "day", labels, slope).TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
        Assert.Equal(columns, problem.Columns);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
