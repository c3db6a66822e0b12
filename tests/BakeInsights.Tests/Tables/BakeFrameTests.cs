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

    // 65 % by four spooned cups: see FlourUncertaintyTests.
    [Fact]
    public void Standard_deviations_stand_behind_the_measures_that_uncertain_flour_moves()
    {
        var frame = Csv.Read(
            "baked_on,flour_g,flour_measure,water_g,rise_min",
            "2026-10-01,504,spooned,327.6,90", "2026-10-02,500,weighed,325,95", "2026-10-03,,,,90").Bakes.ToDataFrame();

        Assert.Equal(
            ["hydration_pct_sd", "dough_yield_sd"],
            frame.Columns.Select(column => column.Name).Where(name => name.EndsWith("_sd", StringComparison.Ordinal)));
        Assert.Equal("hydration_pct", frame.Columns[frame.Columns.IndexOf("hydration_pct_sd") - 1].Name);
        Assert.Equal(2.777, (double)frame["hydration_pct_sd"][0], 5e-4);
        Assert.Equal(0.0, frame["hydration_pct_sd"][1]);
        Assert.Null(frame["hydration_pct_sd"][2]);
    }

    [Fact]
    public void Frame_of_no_bakes_has_all_columns_and_no_rows()
    {
        var frame = Array.Empty<Bake>().ToDataFrame();

        Assert.Equal(0, frame.Rows.Count);
        Assert.Equal(Measures.All.Count + 2, frame.Columns.Count);
    }
}
