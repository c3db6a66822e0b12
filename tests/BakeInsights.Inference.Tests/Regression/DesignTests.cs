using Xunit;

namespace BakeInsights.Inference.Tests;

public class DesignTests
{
    private static readonly Design Three =
        new(DesignColumn.Constant(2), new DesignColumn("a", [1, 2]), new DesignColumn("b", [3, 4]));

    [Fact]
    public void Columns_are_selected_in_the_order_named() =>
        Assert.Equal(["b", "constant"], Three.Select("b", "constant").Names);

    [Fact]
    public void Columns_are_left_out_by_name() => Assert.Equal(["constant", "b"], Three.Without("a").Names);

    [Fact]
    public void Row_holds_the_values_of_all_columns() => Assert.Equal([1, 2, 4], Three.Row(1));

    [Fact]
    public void Column_keeps_its_values_when_the_source_changes()
    {
        double[] source = [1, 2];
        var column = new DesignColumn("x", source);

        source[0] = 9;

        Assert.Equal([1, 2], column.Values);
    }

    [Theory]
    [InlineData(new double[] { 5, 5 }, true)]
    [InlineData(new double[] { 5, 6 }, false)]
    [InlineData(new double[] { 0, 0 }, false)]
    public void Column_of_one_number_other_than_zero_is_constant(double[] values, bool constant) =>
        Assert.Equal(constant, new DesignColumn("x", values).IsConstant);

    [Theory]
    [InlineData(GroupCoding.EveryGroup, "oven = a", "oven = b")]
    [InlineData(GroupCoding.AgainstFirst, "oven = b")]
    public void Groups_become_indicators_in_the_order_of_their_labels(GroupCoding coding, params string[] names)
    {
        var columns = GroupColumns.From("oven", ["b", "a", "b"], coding);

        Assert.Equal(names, columns.Select(column => column.Name));
        Assert.Equal([1, 0, 1], columns[^1].Values);
    }

    [Fact]
    public void Malformed_designs_are_programming_errors()
    {
        Throws("A design needs at least one column.", () => new Design());
        Throws("Two columns are named a.", () => new Design(Three.Columns[1], Three.Columns[1]));
        Throws("Column c has 1 rows and column a has 2.",
            () => new Design(Three.Columns[1], new DesignColumn("c", [1])));
        Throws("Column c has no rows.", () => new DesignColumn("c", []));
        Throws("No column is named c; there are constant, a, b.", () => Three.IndexOf("c"));
        Throws("Every row needs a label of oven: leave unlabelled rows out.",
            () => GroupColumns.From("oven", ["a", ""], GroupCoding.EveryGroup));
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
