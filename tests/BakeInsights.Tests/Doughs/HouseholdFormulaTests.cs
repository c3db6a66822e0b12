using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class HouseholdFormulaTests
{
    private static readonly HouseholdWeight Flour = HouseholdWeights.OfFlour(FlourMeasure.Spooned)!;

    // 8 % of flour turns 65 % hydration into 60.2 to 70.7 %, 4 % into 62.5 to 67.7 %, by hand: 65 / 1.08, 65 / 0.92.
    [Theory]
    [InlineData(FlourMeasure.Spooned, 62.5, 67.7, "62 to 68 % hydration")]
    [InlineData(FlourMeasure.CupUnknown, 60.2, 70.7, "60 to 71 % hydration")]
    [InlineData(FlourMeasure.Weighed, 65, 65, "65 % hydration")]
    public void Filling_spreads_the_hydration(FlourMeasure measure, double low, double high, string text)
    {
        // Sixty-five parts of water to a hundred of flour, four cups of it, so that no rounding disturbs the spread.
        var cup = HouseholdWeights.OfFlour(measure)?.GramsPerCup ?? 100;
        var cups = new HouseholdFormula(new Formula(Ingredient.Flour(4 * cup), Unrounded(2.6 * cup)), measure);
        Assert.Equal(low, cups.LowHydrationPct, 0.05);
        Assert.Equal(high, cups.HighHydrationPct, 0.05);
        Assert.Equal(text, cups.HydrationText);
    }

    [Fact]
    public void What_has_no_published_cup_is_to_be_weighed()
    {
        var cups = new HouseholdFormula(
            new Formula(
                Ingredient.Flour(500),
                Ingredient.Yeast(15, YeastKind.Fresh),
                Ingredient.Butter(113.5),
                Ingredient.Preferment("poolish", 200, 100)),
            FlourMeasure.Spooned);
        Assert.Equal([true, false, true, false], cups.Lines.Select(line => line.Amount is not null));
        Assert.Equal("1/2 cup", cups.Lines[2].Amount!.Text);
    }

    // USDA Standard Reference 28: a cup of whole-wheat flour is 120 g. None is published for spelt.
    [Fact]
    public void Another_flour_has_its_own_cup_or_is_weighed()
    {
        var cups = new HouseholdFormula(
            new Formula(Ingredient.Flour(240, "whole-wheat flour"), Ingredient.Flour(240, "spelt flour")), FlourMeasure.Spooned);
        Assert.Equal("2 x 1 cup", cups.Lines[0].Amount!.Text);
        Assert.Null(cups.Lines[1].Amount);
    }

    // By hand: half of 480 g is by the cup and 4 % off, so 300 / (480 + 9.6) and 300 / (480 - 9.6).
    [Fact]
    public void Flour_that_is_weighed_adds_no_spread()
    {
        var cups = new HouseholdFormula(
            new Formula(
                Ingredient.Flour(240, "whole-wheat flour"), Ingredient.Flour(240, "spelt flour"), Unrounded(300)),
            FlourMeasure.Spooned);
        Assert.Equal(61.27, cups.LowHydrationPct, 0.005);
        Assert.Equal(63.78, cups.HighHydrationPct, 0.005);
    }

    [Theory]
    [InlineData(504, "4 x 1 cup")]
    [InlineData(546, "4 x 1 cup + 1/3 cup")]
    [InlineData(94.5, "1/2 cup + 1/4 cup")]
    [InlineData(7.875, "1 tbsp")]
    [InlineData(0.01, "1/8 tsp")]
    public void A_mass_becomes_the_fewest_fillings(double grams, string text) =>
        Assert.Equal(text, HouseholdAmount.Of(grams, Flour).Text);

    [Fact]
    public void Fillings_add_up_and_come_within_two_percent_or_an_eighth_of_a_teaspoon() =>
        Gen.Double[1, 5_000].Sample(grams =>
        {
            var amount = HouseholdAmount.Of(grams, Flour);
            var gramsInEighth = Flour.GramsPerCup / 384;
            var added = amount.Scoops.Sum(one => one.Count * one.Tool.Eighths) * gramsInEighth;
            var missed = Math.Abs(amount.GivenG - grams);
            return Math.Abs(added - amount.GivenG) < 1e-9
                && Math.Abs(amount.RoundingPct - (100 * (amount.GivenG - grams) / grams)) < 1e-9
                && (missed <= 0.02 * grams + 1e-9 || missed <= (gramsInEighth / 2) + 1e-9);
        });

    [Fact]
    public void No_tool_is_filled_as_often_as_the_next_larger_holds() => Gen.Double[1, 2_000].Sample(grams =>
        HouseholdAmount.Of(grams, Flour).Scoops.All(one => one.Tool.Eighths == MeasuringTool.EighthsInCup || one.Count <= 3));

    [Fact]
    public void An_amount_that_nobody_measures_by_the_cup_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => HouseholdAmount.Of(20_000, Flour));

    // Water under a name that no cup is published for stays at its weight.
    private static Ingredient Unrounded(double grams) =>
        Ingredient.Preferment("batter", Ingredient.Flour(1e-9), Ingredient.PouredWater(grams));
}
