using Xunit;

namespace BakeInsights.Tests;

public class BakeFrameTests
{
    private static readonly IReadOnlyList<Bake> Bakes = Csv.Read(
        "bake_id,baked_on,flour_g,water_g,salt_g,dough_temp_f",
        "a,2026-10-01,500,325,10,76", "b,2026-09-30,500,340,,", "c,2026-10-02,,,,77").Bakes;

    [Fact]
    public void Frame_has_name_day_and_every_measure()
    {
        var frame = Bakes.ToDataFrame();

        Assert.Equal(
            ["bake_id", "baked_on", .. Measures.All.Select(measure => measure.Name)], frame.Columns.Select(column => column.Name));
        Assert.Equal(3, frame.Rows.Count);
    }

    [Fact]
    public void Names_are_text_days_are_dates_and_measures_are_numbers()
    {
        var frame = Bakes.ToDataFrame();

        Assert.Equal(typeof(string), frame["bake_id"].DataType);
        Assert.Equal(typeof(DateTime), frame["baked_on"].DataType);
        Assert.All(frame.Columns.Skip(2), column => Assert.Equal(typeof(double), column.DataType));
    }

    [Fact]
    public void Rows_stand_in_the_order_of_the_bakes_with_their_values()
    {
        var frame = Bakes.ToDataFrame();

        Assert.Equal(["a", "b", "c"], Column("bake_id"));
        Assert.Equal(
            [new DateTime(2026, 10, 1), new DateTime(2026, 9, 30), new DateTime(2026, 10, 2)],
            Column("baked_on").Cast<DateTime>());
        Assert.Equal([65.0, 68.0, null], Column("hydration_pct").Cast<double?>());
        Assert.Equal([2.0, null, null], Column("salt_pct").Cast<double?>());
        Assert.Equal(
            [24.4444, null, 25.0],
            Column("dough_temp_c").Cast<double?>().Select(value => value is { } celsius ? Math.Round(celsius, 4) : (double?)null));

        IEnumerable<object?> Column(string name) => Enumerable.Range(0, 3).Select(row => frame[name][row]);
    }

    [Fact]
    public void What_the_journal_lacks_is_null_and_never_a_number()
    {
        var frame = Bakes.ToDataFrame();

        Assert.Equal(3, frame["rise_min"].NullCount);
        Assert.All(
            frame.Columns.Skip(2).SelectMany(column => Enumerable.Range(0, 3).Select(row => column[row])),
            value => Assert.True(value is null || double.IsFinite((double)value)));
    }

    [Fact]
    public void Frame_of_no_bakes_has_all_columns_and_no_rows()
    {
        var frame = Array.Empty<Bake>().ToDataFrame();

        Assert.Equal(0, frame.Rows.Count);
        Assert.Equal(Measures.All.Count + 2, frame.Columns.Count);
    }
}
