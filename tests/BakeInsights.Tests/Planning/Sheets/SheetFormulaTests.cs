using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Which formula a sheet has, worked by hand.</summary>
public sealed class SheetFormulaTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Typical_dough_is_the_median_of_what_most_bakes_have()
    {
        // Hydration 60, 65, 70; salt 2 in all; sugar in one of three only; yeast 1, 1 and 2 % instant.
        var sheet = One(Journal(
            "flour_g,water_g,salt_g,yeast_g,yeast_kind,sugar_g",
            "1000,600,20,10,instant,", "500,325,10,5,instant,20", "1000,700,20,20,instant,"));
        Assert.Equal(["flour", "water", "salt", "instant yeast"], sheet.Formula.Ingredients.Select(one => one.Name));
        Assert.Equal([1000, 650, 20, 10], sheet.Formula.Ingredients.Select(one => one.Grams));
        Assert.Equal(3, sheet.FormulaBakes);
    }

    [Fact]
    public void Preferment_counts_in_the_hydration_of_the_typical_dough()
    {
        // 400 g levain at 100 % is 200 + 200: all flour 1000, all water 680.
        var sheet = One(Journal("flour_g,water_g,preferment_g,preferment_hydration_pct", "800,480,400,100"));
        Assert.Equal(68, sheet.Formula.HydrationPct, 1e-9);
        Assert.Equal([800, 480, 400], sheet.Formula.Ingredients.Select(one => one.Grams));
    }

    [Fact]
    public void Written_formula_in_percent_takes_the_journals_usual_flour()
    {
        _folder.Write("formulas.csv", "formula,ingredient,percent,amount\nhouse,flour,100,\nhouse,water,65,\nhouse,salt,2,\nhouse,fresh yeast,3,\nrye,rye flour,,300 g\nrye,water,,240 g\n");
        var journal = Journal("flour_g,water_g", "800,500");
        var house = One(journal, new() { Formula = "House" });
        Assert.Equal([800, 520, 16, 24], house.Formula.Ingredients.Select(one => one.Grams));
        Assert.Equal("house", house.FormulaName);
        Assert.Equal(3 * 0.33, house.Formula.YeastAsInstantPct, 1e-9);
        Assert.Equal([300, 240], One(journal, new() { Formula = "rye" }).Formula.Ingredients.Select(one => one.Grams));
    }

    [Fact]
    public void Lines_by_weight_and_in_percent_need_flour_by_weight()
    {
        _folder.Write("formulas.csv", "formula,ingredient,percent,amount\nhouse,water,65,\nhouse,honey,,1 oz\n");
        Assert.Equal(
            "The formula house has some lines by weight and some in percent, and no flour by weight to bring them together. Give the flour's amount, or all lines in percent.",
            Problem(Journal("flour_g,water_g", "800,500"), new() { Formula = "house" }));
    }

    [Fact]
    public void Bake_changes_water_yeast_and_salt_and_keeps_the_flour()
    {
        var journal = Journal("flour_g,water_g,salt_g,yeast_g,yeast_kind", "1000,650,20,10,active_dry");
        var sheet = One(journal, new() { Bakes = [new() { Name = "A", HydrationPct = 70, YeastPct = 1.65, SaltPct = 1.8, SugarPct = 3 }] });
        var grams = sheet.Formula.Ingredients.ToDictionary(one => one.Name, one => one.Grams);
        Assert.Equal((1000, 700, 18), (grams["flour"], grams["water"], Math.Round(grams["salt"], 9)));

        // 1.65 % instant = 2 % active dry, at 0.33 / 0.40.
        Assert.Equal(20, grams["active dry yeast"], 1e-9);
        Assert.Equal(30, grams["sugar"], 1e-9);
    }

    [Fact]
    public void Loaves_and_piece_set_the_dough_with_what_stays_on_the_hands()
    {
        // 1680 g in, 1646.4 g to the oven: 2 % stayed behind. 4 x 500 / 0.98.
        var journal = Journal("flour_g,water_g,salt_g,yeast_g,yeast_kind,dough_g,loaf_count", "1000,650,20,10,instant,1646.4,2");
        var sheet = One(journal, new() { Loaves = 4, PieceG = 500 });
        Assert.Equal(2000 / 0.98, sheet.Formula.TotalG, 1e-6);
        Assert.Equal(new SheetPieces(2, 823.2, 2), Rounded(One(journal).Pieces!));
    }

    [Fact]
    public void Unknown_formula_names_those_there_are()
    {
        _folder.Write("formulas.csv", "formula,ingredient,percent\nhouse,flour,100\nhouse,water,65\n");
        var journal = Journal("formula,flour_g,water_g", "lane loaf,1000,650");
        Assert.Equal(
            $"There is no formula baguette in {Path.GetFileName(_folder.Path)}. Say house, or lane loaf, or leave --formula away for the journal's typical dough.",
            Problem(journal, new() { Formula = "baguette" }));
        Assert.Equal(650, One(journal, new() { Formula = "lane loaf" }).Formula.GramsOf(IngredientRole.Water));
    }

    [Fact]
    public void Journal_without_flour_and_water_has_no_typical_dough() => Assert.Equal(
        "No bake of the journal has both flour and water, so there is no typical dough. Log flour_g and water_g, or write a formula into formulas.csv and name it with --formula.",
        Problem(Journal("salt_g", "20"), new()));

    private static SheetPieces Rounded(SheetPieces pieces) =>
        pieces with { PieceG = Math.Round(pieces.PieceG, 6), LossPct = Math.Round(pieces.LossPct, 9) };

    private Journal Journal(string columns, params string[] rows)
    {
        _folder.Write("bakes.csv", $"baked_on,{columns}\n" + string.Concat(rows.Select(row => $"2026-10-05,{row}\n")));
        return BakeInsights.Journal.Read(_folder.Path);
    }

    private static Sheet One(Journal journal, SheetWishes? wishes = null) =>
        Assert.Single(Sheets.Of(journal, null, wishes ?? new(), UnitSystem.Metric).Value);

    private static string Problem(Journal journal, SheetWishes wishes) =>
        Sheets.Of(journal, null, wishes, UnitSystem.Metric).Match(_ => "", problem => $"{problem.Message} {problem.Remedy}");
}
