using Xunit;

namespace BakeInsights.Tests;

/// <summary>Headers in a baker's own words.</summary>
public class HeaderAliasTests
{
    public static TheoryData<string, string> Aliases
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (column, alias) in BakeColumns.All.SelectMany(column => column.OtherNames.Select(alias => (column, alias))))
            {
                data.Add(alias, column.Name);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Aliases))]
    public void Every_other_name_is_bound_to_its_one_column(string alias, string column)
    {
        Assert.Equal(column, ReadAs(alias));
        Assert.Equal(column, ReadAs(alias.Replace('_', ' ').ToUpperInvariant()));
        Assert.Single(BakeColumns.All, each => each.OtherNames.Contains(alias));
        Assert.DoesNotContain(BakeColumns.All, each => each.Name == alias);
    }

    [Theory]
    [InlineData("Dough temp (°F)", "76", "dough_temp_c", 24.4444)]
    [InlineData("DOUGH-TEMP [F]", "76", "dough_temp_c", 24.4444)]
    [InlineData("Flour [g]", "500", "flour_g", 500)]
    [InlineData("flour / oz", "18", "flour_g", 510.2914)]
    [InlineData("Flour grams", "500", "flour_g", 500)]
    [InlineData("Bulk (min)", "95", "rise_min", 95)]
    [InlineData("Bulk fermentation (h)", "1.5", "rise_min", 90)]
    [InlineData("first rise", "95 min", "rise_min", 95)]
    [InlineData("Final dough temperature (°C)", "24.5", "dough_temp_c", 24.5)]
    [InlineData("FDT °F", "76", "dough_temp_c", 24.4444)]
    [InlineData("Second\u00A0rise  (min)", "50", "proof_min", 50)]
    [InlineData("Oven (F)", "450", "oven_temp_c", 232.2222)]
    [InlineData("Preferment hydration (%)", "100", "preferment_hydration_pct", 100)]
    [InlineData("Loaf weight (lb)", "2", "loaf_g", 907.18474)]
    [InlineData("Volume (ml)", "2960", "loaf_volume_ml", 2960)]
    [InlineData("Crumb (1 to 5)", "4", "crumb_score", 4)]
    [InlineData("Flour ()", "500 g", "flour_g", 500)]
    public void Name_in_words_is_read_with_its_unit(string header, string cell, string canonical, double expected)
    {
        var column = BakeColumns.All.OfType<QuantityColumn>().Single(column => column.Name == canonical);

        Assert.Equal(expected, Csv.Bake($"baked_on,{header}", $"2026-10-01,{cell}")[column]!.Value, 1e-4);
    }

    [Fact]
    public void Journal_with_every_name_in_words_is_read()
    {
        var journal = Csv.Read("No.,Date,Recipe,Made by,Flour (g),Notes", "1,2026-10-01,lane loaf,Dov,500,fine");

        Assert.Equal(["COLUMN_OWN", "COLUMN_READ_AS", "COLUMN_READ_AS", "COLUMN_READ_AS"], journal.Notices.Select(notice => notice.Code).Order(StringComparer.Ordinal));
        var bake = journal.Bakes.Single();
        Assert.Equal(("lane loaf", "Dov", 500), (bake[BakeColumns.Formula], bake[BakeColumns.Baker], bake[BakeColumns.Flour]));
        Assert.Equal("1", bake.OwnColumns["No."]);
    }

    [Fact]
    public void Canonical_name_wins_over_another_name_wherever_it_stands()
    {
        var bake = Csv.Bake("baked_on,volume (ml),loaf_volume_ml,bulk (min),rise_min", "2026-10-01,9,2960,9,95");

        Assert.Equal((2960, 95), (bake[BakeColumns.LoafVolume], bake[BakeColumns.Rise]));
        Assert.Equal(["9", "9"], [bake.OwnColumns["volume (ml)"], bake.OwnColumns["bulk (min)"]]);
    }

    [Fact]
    public void First_of_two_other_names_is_read_and_the_second_kept()
    {
        var bake = Csv.Bake("baked_on,Bulk (min),First rise (min)", "2026-10-01,95,90");

        Assert.Equal(95, bake[BakeColumns.Rise]);
        Assert.Equal("90", bake.OwnColumns["First rise (min)"]);
    }

    // What was wished for is not what was measured.
    [Theory]
    [InlineData("DDT (°C)")]
    [InlineData("Desired dough temp (°C)")]
    [InlineData("Flour (stone)")]
    [InlineData("Dough temp (end of mixing)")]
    [InlineData("flour_g (oz)")]
    [InlineData("Crumb (°C)")]
    [InlineData("(g)")]
    [InlineData("")]
    public void Name_that_says_something_else_is_kept_as_ones_own(string header)
    {
        var journal = Csv.Read($"baked_on,{header}", "2026-10-01,24");

        Assert.Equal("COLUMN_OWN", journal.Notices.Single().Code);
        Assert.Equal("24", journal.Bakes.Single().OwnColumns[header]);
    }

    [Theory]
    [InlineData("Temperature", "dough_temp_c or room_temp_c or oven_temp_c")]
    [InlineData("time (min)", "rise_min or proof_min or bake_min")]
    [InlineData("Weight (g)", "dough_g or loaf_g")]
    [InlineData("Score", "crumb_score or crust_score or flavour_score")]
    public void Name_of_several_meanings_is_kept_and_asked_about(string header, string meanings)
    {
        var journal = Csv.Read($"baked_on,{header}", "2026-10-01,24");

        Assert.Equal(("COLUMN_AMBIGUOUS", Gravity.Doubted), (journal.Notices.Single().Code, journal.Notices.Single().Gravity));
        Assert.StartsWith($"It could be {meanings};", journal.Notices.Single().Message, StringComparison.Ordinal);
        Assert.Equal("24", journal.Bakes.Single().OwnColumns[header]);
    }

    private static string? ReadAs(string header)
    {
        var message = Csv.Read(header == "date" || header == "DATE" ? header : $"baked_on,{header}", "2026-10-01,").Notices
            .Where(notice => notice.Code is "COLUMN_READ_AS" or "COLUMN_TAKEN").Select(notice => notice.Message).SingleOrDefault();
        return BakeColumns.All.Select(column => column.Name)
            .SingleOrDefault(name => message == $"Read as {name}." || message?.StartsWith($"It could be {name},", StringComparison.Ordinal) == true);
    }
}
