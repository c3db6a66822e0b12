using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public sealed class BakeFieldTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // Factors: NIST Special Publication 811, Appendix B (1 oz = 28.349 523 g; °C = (°F - 32)/1.8).
    [Theory]
    [InlineData("dough_temp_c", "76", "24.4440")]
    [InlineData("dough_temp_c", "77", "25")]
    [InlineData("dough_temp_f", "76", "76")]
    [InlineData("flour_g", "35", "992.2")]
    [InlineData("yeast_g", "0.25", "7.0870")]
    [InlineData("oven_temp_c", "482", "250")]
    [InlineData("rise_min", "75", "75")]
    [InlineData("loaf_count", "2", "2")]
    public void Bare_number_in_us_units_is_written_in_the_columns(string column, string typed, string cell)
    {
        var field = Field(column);

        Assert.Equal(cell, field.CellOf(typed, field.UnitIn(UnitSystem.Us)));
    }

    [Theory]
    [InlineData("dough_temp_f", "25", "77")]
    [InlineData("flour_oz", "500", "17.6370")]
    [InlineData("rise_h", "90", "1.5")]
    public void Bare_number_in_metric_units_is_written_in_the_columns(string column, string typed, string cell)
    {
        var field = Field(column);

        Assert.Equal(cell, field.CellOf(typed, field.UnitIn(UnitSystem.Metric)));
    }

    [Theory]
    [InlineData("dough_temp_c", "76F")]
    [InlineData("flour_g", "2 lb")]
    [InlineData("dough_temp_c", "warm")]
    [InlineData("mixed_at", "19:40")]
    public void Number_with_a_unit_and_what_is_no_number_are_written_as_typed(string column, string typed)
    {
        var field = Field(column);

        Assert.Equal(typed, field.CellOf(typed, field.UnitIn(UnitSystem.Us)));
    }

    [Theory]
    [InlineData("dough_temp", "76", "76 °F")]
    [InlineData("flour_cups", "19", "19 oz")]
    public void Column_that_can_not_hold_the_bare_number_gets_its_unit_too(string column, string typed, string cell)
    {
        var field = Field(column);

        Assert.Equal(cell, field.CellOf(typed, field.UnitIn(UnitSystem.Us)));
    }

    [Fact]
    public void What_is_written_reads_back_as_what_was_typed()
    {
        // Once: the samples run side by side, and there is one file.
        var field = Field("dough_temp_c");
        Gen.Select(Gen.Int[400, 1100], Gen.Int[0, 1]).Sample((tenths, decimals) =>
        {
            var typed = decimals == 0 ? $"{tenths / 10}" : FormattableString.Invariant($"{tenths / 10.0:0.0}");
            QuantityText.TryParse(typed, out var number);
            QuantityText.TryParse(field.CellOf(typed, MeasureUnits.Fahrenheit), out var cell);

            Assert.Equal(number.Value, (cell.Value * 1.8) + 32, 0.006 / Math.Pow(10, decimals));
        });
    }

    [Theory]
    [InlineData("dough_temp_f", "77")]
    [InlineData("flour_oz", "35")]
    [InlineData("flour", "992.233309 g")]
    [InlineData("flour_cups", null)]
    [InlineData("yeast_kind", "instant")]
    [InlineData("notes", null)]
    public void Value_of_the_bake_before_is_given_in_the_columns_unit(string column, string? cell)
    {
        var bake = Csv.Bake("baked_on,dough_temp_f,flour_oz,yeast_kind", "2026-10-01,77,35,instant");

        Assert.Equal(cell, Field(column).CellFor(bake));
    }

    private BakeField Field(string column) =>
        BakeForm.Open(_folder.Write("bakes.csv", $"baked_on,{column}\n")).Find(column)!.Value.Field;
}
