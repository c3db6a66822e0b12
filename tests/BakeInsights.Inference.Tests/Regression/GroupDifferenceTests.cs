using Xunit;

namespace BakeInsights.Inference.Tests;

public class GroupDifferenceTests
{
    private static readonly string[] Ovens = ["a", "a", "b", "b", "c", "c"];
    private static readonly double[] Y = [1, 3, 4, 5, 9, 8];

    [Theory]
    [InlineData("b", "a", 2.5)]
    [InlineData("a", "c", -6.5)]
    [InlineData("c", "b", 4)]
    public void Difference_of_group_means_is_the_same_however_groups_are_coded(
        string group, string other, double expected)
    {
        var every = GroupColumns.Difference(
            LeastSquares.Fit(new Design(GroupColumns.From("oven", Ovens, GroupCoding.EveryGroup)), Y).Value,
            "oven", group, other);
        var first = GroupColumns.Difference(AgainstFirst(), "oven", group, other);

        Close.Relative(expected, every.Estimate, 1e-14);
        Close.Relative(expected, first.Estimate, 1e-14);

        // Within-group squares of 2, 0.5 and 0.5 over three degrees of freedom; two means of two rows each.
        Close.Relative(1, every.StandardError, 1e-14);
        Close.Relative(1, first.StandardError, 1e-14);
        Assert.Equal($"oven: {group} less {other}", first.Name);
    }

    [Theory]
    [InlineData("z", "a")]
    [InlineData("a", "a")]
    public void Unknown_or_equal_groups_are_a_programming_error(string group, string other) =>
        Assert.Throws<ArgumentException>(() => GroupColumns.Difference(AgainstFirst(), "oven", group, other));

    private static LeastSquaresFit AgainstFirst() => LeastSquares.Fit(
        new Design([DesignColumn.Constant(6), .. GroupColumns.From("oven", Ovens, GroupCoding.AgainstFirst)]), Y).Value;
}
