using Xunit;

namespace BakeInsights.Tests;

/// <summary>Columns by their names: units at the end, letter case, the journal's own, and the same one twice.</summary>
public class HeaderTests
{
    public static TheoryData<string> KnownColumns => [.. BakeColumns.All.Select(column => column.Name)];

    // Pounds, ounces and cups: NIST Handbook 44, Appendix C. Grams of a cup: USDA Standard Reference 28 and Home
    // Economics Research Report 41, see HouseholdWeightsTests.
    [Theory]
    [InlineData("dough_temp_f", "76", "dough_temp_c", 24.4444, 1e-4)]
    [InlineData("dough_temp_c", "24.5", "dough_temp_c", 24.5, 0)]
    [InlineData("flour_oz", "18", "flour_g", 510.2914, 1e-4)]
    [InlineData("flour_lb", "2", "flour_g", 907.18474, 1e-5)]
    [InlineData("flour_kg", "1.25", "flour_g", 1250, 1e-9)]
    [InlineData("flour_cups", "4", "flour_g", 500, 1e-9)]
    [InlineData("flour_label_cups", "4", "flour_g", 507.2103, 1e-4)]
    [InlineData("flour_metric_cups", "4", "flour_g", 528.3441, 1e-4)]
    [InlineData("Flour (metric cups)", "4", "flour_g", 528.3441, 1e-4)]
    [InlineData("salt_label_tsp", "2", "salt_g", 12.3421, 1e-4)]
    [InlineData("water_cups", "1.5", "water_g", 355.5, 1e-9)]
    [InlineData("honey_tbsp", "2", "honey_g", 42.375, 1e-9)]
    [InlineData("salt_tsp", "2", "salt_g", 12.1667, 1e-4)]
    [InlineData("water_ml", "236.5882365", "water_g", 237, 1e-6)]
    [InlineData("rise_h", "1.5", "rise_min", 90, 1e-9)]
    [InlineData("rise_hours", "1.5", "rise_min", 90, 1e-9)]
    [InlineData("loaf_volume_cuin", "120", "loaf_volume_ml", 1966.4477, 1e-4)]
    [InlineData("Dough_Temp_F", "76", "dough_temp_c", 24.4444, 1e-4)]
    [InlineData("  flour_g ", "500", "flour_g", 500, 0)]
    public void Quantity_column_may_end_in_another_unit(
        string header, string cell, string canonical, double expected, double tolerance) =>
        Assert.Equal(expected, Quantity($"baked_on,{header}", $"2026-10-01,{cell}", canonical), tolerance);

    [Theory]
    [InlineData("dough_temp_c", "76F", "dough_temp_c", 24.4444, 1e-4)]
    [InlineData("dough_temp_f", "24.5 °C", "dough_temp_c", 24.5, 1e-9)]
    [InlineData("dough_temp", "76 f", "dough_temp_c", 24.4444, 1e-4)]
    [InlineData("flour_g", "1.1 lb", "flour_g", 498.9516, 1e-4)]
    [InlineData("flour_oz", "500 g", "flour_g", 500, 0)]
    [InlineData("yeast_g", "1 tsp", "yeast_g", 2.9583, 1e-4)]
    [InlineData("flour_g", "3 cups", "flour_g", 375, 1e-9)]
    [InlineData("flour_g", "3 label cups", "flour_g", 380.4078, 1e-4)]
    [InlineData("flour_cups", "3 metric cups", "flour_g", 396.2581, 1e-4)]
    [InlineData("rise_min", "2 h", "rise_min", 120, 1e-9)]
    [InlineData("rise_h", "95 min", "rise_min", 95, 0)]
    [InlineData("preferment_hydration_pct", "100 %", "preferment_hydration_pct", 100, 0)]
    public void Cell_may_carry_its_own_unit(string header, string cell, string canonical, double expected, double tolerance) =>
        Assert.Equal(expected, Quantity($"baked_on,{header}", $"2026-10-01,{cell}", canonical), tolerance);

    [Theory]
    [InlineData("spooned", 126)]
    [InlineData("sifted", 116)]
    [InlineData("Scooped", 137)]
    [InlineData("cup_unknown", 125)]
    public void Flour_by_the_cup_goes_by_the_way_of_filling(string measure, double grams) =>
        Assert.Equal(grams, Quantity("baked_on,flour_cups,flour_measure", $"2026-10-01,1,{measure}", "flour_g"), 1e-9);

    [Theory]
    [InlineData("weighed")]
    [InlineData("")]
    [InlineData("poured")]
    public void Flour_by_the_cup_in_no_known_way_is_marked_so_in_the_bake(string measure)
    {
        var bake = Csv.Bake("baked_on,flour_cups,flour_measure", $"2026-10-01,4,{measure}");

        Assert.Equal(FlourMeasure.CupUnknown, bake.FlourMeasure);
        Assert.True(bake.FlourByCup);
        Assert.Equal(500, bake[BakeColumns.Flour]!.Value, 1e-9);
    }

    [Theory]
    [InlineData("flour_c")]
    [InlineData("flour_stone")]
    [InlineData("flour_")]
    [InlineData("flourg")]
    [InlineData("rise_temp")]
    [InlineData("baker_name")]
    public void Name_that_only_begins_like_a_known_one_is_not_taken_for_it(string header)
    {
        var bake = Csv.Bake($"baked_on,{header}", "2026-10-01,77");

        Assert.Null(bake[BakeColumns.Flour]);
        Assert.Null(bake[BakeColumns.Rise]);
        Assert.Null(bake[BakeColumns.Baker]);
    }

    [Theory]
    [MemberData(nameof(KnownColumns))]
    public void Canonical_name_is_known_and_bound_to_no_other_column(string name)
    {
        var journal = Csv.Read(name == "baked_on" ? "baked_on" : $"baked_on,{name}");

        Assert.DoesNotContain(journal.Notices, notice => notice.Code is "COLUMN_OWN" or "COLUMN_TWICE");
    }

    [Fact]
    public void All_canonical_names_together_are_as_many_columns() =>
        Assert.Empty(Csv.Read(string.Join(',', BakeColumns.All.Select(column => column.Name))).Notices);

    [Fact]
    public void Columns_of_ones_own_are_kept_as_text()
    {
        var bake = Csv.Bake("baked_on,Oven place,mill_lot", "2026-10-01, top ,");

        Assert.Equal([KeyValuePair.Create("Oven place", "top")], bake.OwnColumns);
    }

    [Theory]
    [InlineData("flour_g,flour_oz", "500,9")]
    [InlineData("flour_g,Flour_G", "500,9")]
    public void First_of_two_columns_for_one_thing_is_read(string columns, string cells) =>
        Assert.Equal(500, Quantity($"baked_on,{columns}", $"2026-10-01,{cells}", "flour_g"));

    [Fact]
    public void Remarks_on_a_header_name_the_line_it_stands_on()
    {
        var journal = Csv.ReadText("\n\nbaked_on,mine\n2026-10-01,x\n");

        Assert.Equal((3, "COLUMN_OWN"), (journal.Notices.Single().Line, journal.Notices.Single().Code));
        Assert.Equal(4, journal.Bakes.Single().Origin.Line);
    }

    private static double Quantity(string header, string row, string canonical)
    {
        var column = BakeColumns.All.OfType<QuantityColumn>().Single(column => column.Name == canonical);
        return Csv.Bake(header, row)[column]!.Value;
    }
}
