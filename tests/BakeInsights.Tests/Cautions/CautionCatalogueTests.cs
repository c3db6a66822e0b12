using Xunit;

namespace BakeInsights.Tests;

public class CautionCatalogueTests
{
    private static readonly Formula Lean = new(
        Ingredient.Flour(500), Ingredient.PouredWater(325), Ingredient.Yeast(6.5, YeastKind.ActiveDry), Ingredient.Salt(10));

    private static readonly Formula Enriched = new(
        Ingredient.Flour(500), Ingredient.Milk(250), Ingredient.Egg(100), Ingredient.Yeast(7, YeastKind.Instant));

    [Fact]
    public void Every_caution_has_words_and_a_source() => Assert.All(CautionCatalogue.All, caution =>
    {
        Assert.NotEmpty(caution.Text);
        Assert.NotEmpty(caution.When);
        Assert.NotEmpty(caution.Sources);
        Assert.All(caution.Sources, source => Assert.False(string.IsNullOrWhiteSpace(source)));
    });

    [Fact]
    public void The_usual_topics_are_all_there() => Assert.Equal(
        [
            "Raw flour and dough", "Long warm rise with milk or egg", "Burns and steam", "Allergens", "Mould", "Rope",
            "Cutting before cooling", "Thermometer", "Flour by the cup", "Pieces of one weight", "Selling bread",
        ],
        CautionCatalogue.All.Select(caution => caution.Topic));

    // USDA FSIS: 2 h, 1 h above 90 °F.
    [Theory]
    [InlineData(120, 78, false)]
    [InlineData(121, 78, true)]
    [InlineData(61, 90, false)]
    [InlineData(60, 91, false)]
    [InlineData(61, 91, true)]
    public void A_long_warm_rise_is_named_for_a_dough_with_milk_or_egg(double minutes, double placeF, bool applies)
    {
        var occasion = new Occasion { Formula = Enriched, WarmMinutes = minutes, WarmestPlace = Temperature.FromF(placeF) };
        Assert.Equal(applies, CautionCatalogue.For(occasion).Contains(CautionCatalogue.WarmHolds));
        Assert.DoesNotContain(CautionCatalogue.WarmHolds, CautionCatalogue.For(occasion with { Formula = Lean }));
    }

    [Fact]
    public void Milk_in_a_preferment_counts_as_milk() => Assert.True(new Occasion
    {
        Formula = new(Ingredient.Flour(400), Ingredient.Preferment("sponge", Ingredient.Flour(100), Ingredient.Milk(80))),
    }.HasMilkOrEgg);

    [Fact]
    public void A_class_is_told_of_allergens_and_a_lone_baker_is_not()
    {
        Assert.Contains(CautionCatalogue.Allergens, CautionCatalogue.For(new Occasion { WithOthers = true }));
        Assert.DoesNotContain(CautionCatalogue.Allergens, CautionCatalogue.For(new Occasion()));
    }

    [Fact]
    public void Raw_flour_and_burns_are_named_always()
    {
        var always = CautionCatalogue.For(new Occasion());
        Assert.Contains(CautionCatalogue.RawFlour, always);
        Assert.Contains(CautionCatalogue.Burns, always);
    }

    [Fact]
    public void Selling_and_cups_are_named_when_they_happen()
    {
        Assert.Contains(CautionCatalogue.Selling, CautionCatalogue.For(new Occasion { ForSale = true }));
        Assert.Contains(CautionCatalogue.Cups, CautionCatalogue.For(new Occasion { FlourByCup = true }));
    }

    // Common practice, no source: 1.3 % dry yeast at 22 to 24 °C takes one to two hours for the first rise.
    [Theory]
    [InlineData(22)]
    [InlineData(24)]
    public void The_virtual_kitchens_straight_dough_rises_in_one_to_two_hours(double doughC)
    {
        var truth = new KitchenTruth();
        var minutes = truth.RiseMinutesAtCentre * Math.Exp(
            (truth.RiseDoughTemperature * (doughC - 24))
            + (truth.RiseLogYeast * Math.Log(Lean.YeastAsInstantPct))
            + (truth.RiseSalt * Lean.PctOfFlour(IngredientRole.Salt)));
        Assert.InRange(minutes, 60, 120);
    }

    // HERR-41 and USDA Standard Reference 28: scooped 137 g, spooned 126 g.
    [Fact]
    public void A_scooped_cup_is_heavier_than_a_spooned_one() => Assert.True(
        HouseholdWeights.OfFlour(FlourMeasure.Scooped)!.GramsPerCup > HouseholdWeights.OfFlour(FlourMeasure.Spooned)!.GramsPerCup);
}
