using Xunit;

namespace BakeInsights.Reports.Tests;

public class FormulaViewTests
{
    private static readonly Formula Poolish = new(
        Ingredient.Flour(900),
        Ingredient.PouredWater(468),
        Ingredient.Salt(27),
        Ingredient.Preferment("poolish", 936, 100));

    // By hand: 900 + 468 g of flour, 936 of water; 27 / 1368, 27 / 2331.
    [Fact]
    public void A_formula_shows_both_percentages_under_their_names()
    {
        var table = FormulaView.Of(Poolish, UnitSystem.Metric).Blocks.OfType<ViewTable>().Single();
        Assert.Equal(["Ingredient", "Mass (g)", "% of flour", "% of dough"], table.Columns.Select(column => column.Title));
        Assert.Equal(["salt", "27.0", "2.0", "1.2"], table.Rows[2]);
        Assert.Contains("Prefermented flour: 34.2 %", FormulaView.Of(Poolish, UnitSystem.Us).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Percentages_are_the_same_in_either_unit_system()
    {
        IEnumerable<string> Percentages(UnitSystem units) => FormulaView.Of(Poolish, units).Blocks.OfType<ViewTable>().Single()
            .Rows.SelectMany(row => row.Skip(2));
        Assert.Equal(Percentages(UnitSystem.Metric), Percentages(UnitSystem.Us));
    }

    [Fact]
    public void By_the_cup_what_has_no_cup_is_weighed()
    {
        var table = FormulaView.Of(new HouseholdFormula(Poolish, FlourMeasure.Spooned), UnitSystem.Metric).Blocks.OfType<ViewTable>().Single();
        Assert.Equal(["poolish", "936 g", "–"], table.Rows[3]);
        Assert.Equal("2 x 1 cup", table.Rows[1][1]);
    }

    // Culinary-school table: 30 g fresh are 12 g active dry or 9.9 g instant.
    [Fact]
    public void Yeast_has_a_row_for_each_source_and_a_dash_where_it_does_not_say()
    {
        var table = YeastConversionView.Of(30, YeastKind.Fresh).Blocks.OfType<ViewTable>().Single();
        Assert.Equal(["30.0", "12.0", "9.9"], table.Rows[0].Take(3));
        Assert.Equal(["30.0", "–", "–"], table.Rows[3].Take(3));
        Assert.Equal(YeastConversion.All.Length, table.Rows.Count);
    }

    [Fact]
    public void Cautions_end_with_who_decides() => Assert.EndsWith(
        "follow them.\n", CautionsView.Of(new Occasion { WithOthers = true }).ToText(), StringComparison.Ordinal);
}
