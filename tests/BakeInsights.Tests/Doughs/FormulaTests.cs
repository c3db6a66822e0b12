using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class FormulaTests
{
    private static readonly Gen<Formula> AnyFormula =
        from flour in Gen.Double[100, 5_000]
        from water in Gen.Double[0, 4_000]
        from salt in Gen.Double[0, 100]
        from yeast in Gen.Double[0, 50]
        from milk in Gen.Double[0, 1_000]
        from egg in Gen.Double[0, 500]
        from levain in Gen.Double[1, 2_000]
        from levainHydration in Gen.Double[40, 200]
        from kind in Gen.Enum<YeastKind>()
        select new Formula(
            Ingredient.Flour(flour),
            Ingredient.PouredWater(water),
            Ingredient.Salt(salt),
            Ingredient.Yeast(yeast, kind),
            Ingredient.Milk(milk),
            Ingredient.Egg(egg),
            Ingredient.Preferment("levain", levain, levainHydration));

    [Fact]
    public void Percentages_do_not_change_with_scaling() => Gen.Select(AnyFormula, Gen.Double[0.01, 100]).Sample((formula, factor) =>
    {
        var scaled = formula.Times(factor);
        return Near(scaled.TotalG, factor * formula.TotalG)
            && Near(scaled.HydrationPct, formula.HydrationPct)
            && Near(scaled.EffectiveHydrationPct, formula.EffectiveHydrationPct)
            && Near(scaled.PrefermentedFlourPct, formula.PrefermentedFlourPct)
            && Near(scaled.InoculationPct!.Value, formula.InoculationPct!.Value)
            && Near(scaled.DoughYield, formula.DoughYield)
            && Near(scaled.YeastAsInstantPct, formula.YeastAsInstantPct)
            && scaled.Lines.Zip(formula.Lines).All(pair =>
                Near(pair.First.PctOfFlour, pair.Second.PctOfFlour) && Near(pair.First.PctOfDough, pair.Second.PctOfDough));
    });

    [Fact]
    public void True_percentages_add_up_to_100_on_the_bench_and_in_total() => AnyFormula.Sample(formula =>
        Near(formula.Lines.Sum(line => line.PctOfDough), 100)
        && Near(formula.TotalLines.Sum(line => line.PctOfDough), 100));

    [Fact]
    public void Flour_in_total_is_100_percent_of_flour() => AnyFormula.Sample(formula =>
        Near(formula.PctOfFlour(IngredientRole.Flour), 100)
        && Near(formula.TotalLines.Sum(line => line.PctOfFlour), formula.GrossDoughYield));

    [Fact]
    public void Effective_hydration_is_at_least_the_stated_one() =>
        AnyFormula.Sample(formula => formula.EffectiveHydrationPct >= formula.HydrationPct - 1e-9);

    [Fact]
    public void A_dough_is_scaled_to_a_mass_of_dough_or_of_flour() => AnyFormula.Sample(formula =>
        Near(formula.ForDough(1_234).TotalG, 1_234) && Near(formula.ForFlour(500).Masses.FlourG, 500));

    // Page "Understanding Bakers %": 40.12 lb flour, 38.66 lb poolish half and half, 59.44 lb flour and 38.64 lb water in
    // all, 65.0 %; salt 1.19 lb, 2.0 %. Pounds serve as well as grams. 40.12 + 38.66 / 2 is 59.45.
    [Fact]
    public void A_table_in_pounds_gives_the_percentages_that_its_source_prints()
    {
        var formula = new Formula(
            Ingredient.Flour(40.12),
            Ingredient.PouredWater(38.64 - 19.32),
            Ingredient.Salt(1.19),
            Ingredient.Preferment("poolish", 38.66, 100));
        Assert.Equal(59.44, formula.Masses.FlourG, 0.015);
        Assert.Equal(65.0, formula.HydrationPct, 0.05);
        Assert.Equal(2.0, formula.PctOfFlour(IngredientRole.Salt), 0.05);
    }

    // By hand: levain of 100 % hydration is half flour; 100 g on 400 g.
    [Fact]
    public void The_two_usages_of_inoculation_differ()
    {
        var formula = new Formula(
            Ingredient.Flour(400), Ingredient.PouredWater(250), Ingredient.Preferment("levain", 100, 100));
        Assert.Equal(25, formula.InoculationPct!.Value, 1e-12);
        Assert.Equal(100 * 50 / 450.0, formula.PrefermentedFlourPct, 1e-12);
    }

    [Fact]
    public void Without_flour_weighed_in_there_is_no_inoculation() =>
        Assert.Null(new Formula(Ingredient.Preferment("levain", 100, 100), Ingredient.Salt(1)).InoculationPct);

    [Fact]
    public void A_preferment_in_a_preferment_counts_too()
    {
        var levain = Ingredient.Preferment(
            "levain", Ingredient.Preferment("seed", 20, 100), Ingredient.Flour(40), Ingredient.PouredWater(40));
        var formula = new Formula(Ingredient.Flour(450), Ingredient.PouredWater(300), levain);
        Assert.Equal(100, levain.Grams);
        Assert.Equal(500, formula.Masses.FlourG, 1e-9);
        Assert.Equal(350, formula.Masses.WaterG, 1e-9);
        Assert.Equal(["flour", "water"], formula.TotalLines.Select(line => line.Name));
    }

    [Fact]
    public void A_preferments_milk_and_yeast_count_as_milk_and_yeast()
    {
        var formula = new Formula(
            Ingredient.Flour(400),
            Ingredient.Preferment("sponge", Ingredient.Flour(100), Ingredient.Milk(80), Ingredient.Yeast(10, YeastKind.Fresh)));
        Assert.Equal(16, formula.PctOfFlour(IngredientRole.Milk), 1e-12);
        Assert.Equal(2, formula.PctOfFlour(IngredientRole.Yeast), 1e-12);
        Assert.Equal(0.66, formula.YeastAsInstantPct, 1e-12);
        Assert.Equal(116, formula.DoughYield, 1e-12);
    }

    [Fact]
    public void What_cannot_be_is_refused_with_its_name()
    {
        Assert.Contains("salt", Assert.Throws<ArgumentOutOfRangeException>(() => Ingredient.Salt(-1)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Ingredient.Flour(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Formula(Ingredient.PouredWater(100)));
        Assert.Throws<ArgumentException>(() => Ingredient.Preferment("soaker", Ingredient.PouredWater(100)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Ingredient.Of("rye", IngredientRole.Flour, 100, WaterContents.None));
    }

    private static bool Near(double left, double right) => Math.Abs(left - right) <= 1e-9 * (1 + Math.Abs(right));
}
