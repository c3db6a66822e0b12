using Xunit;

namespace BakeInsights.Tests;

public class HouseholdWeightsTests
{
    private const double TablespoonsInCup = 16;
    private const double TeaspoonsInCup = 48;

    // USDA Home Economics Research Report 41 (Fulton, Matthews and Davis 1977), "Average weight of a measured cup of
    // various foods": all-purpose flour spooned unsifted 126, sifted 116. USDA Standard Reference 28 (2015), WEIGHT
    // file: bread flour "unsifted, dipped" 137, all-purpose flour 125.
    [Theory]
    [InlineData(FlourMeasure.Spooned, 126, "Home Economics Research Report 41")]
    [InlineData(FlourMeasure.Sifted, 116, "Home Economics Research Report 41")]
    [InlineData(FlourMeasure.Scooped, 137, "Standard Reference 28")]
    [InlineData(FlourMeasure.CupUnknown, 125, "Standard Reference 28")]
    public void Cup_of_flour_weighs_what_was_published_for_its_filling(FlourMeasure measure, double grams, string source)
    {
        var weight = HouseholdWeights.OfFlour(measure)!;

        Assert.Equal(grams, weight.GramsPerCup);
        Assert.Contains(source, weight.Source, StringComparison.Ordinal);
    }

    // USDA Standard Reference 28 (2015), WEIGHT file; active dry yeast from Home Economics Research Report 41.
    [Theory]
    [InlineData("water", 237, "Standard Reference 28")]
    [InlineData("salt", 292, "Standard Reference 28")]
    [InlineData("sugar", 200, "Standard Reference 28")]
    [InlineData("milk", 244, "Standard Reference 28")]
    [InlineData("egg", 243, "Standard Reference 28")]
    [InlineData("honey", 339, "Standard Reference 28")]
    [InlineData("yeast", 142, "Home Economics Research Report 41")]
    public void Cup_of_another_ingredient_weighs_what_was_published(string ingredient, double grams, string source)
    {
        var weight = HouseholdWeights.Of(ingredient)!;

        Assert.Equal(grams, weight.GramsPerCup);
        Assert.Contains(source, weight.Source, StringComparison.Ordinal);
    }

    // The spoons that Standard Reference 28 prints beside its cups, rounded as printed: the tablespoon of salt (18,
    // where a sixteenth of the cup is 18.25), honey (21), milk (15); the teaspoon of salt (6.0), sugar (4.2).
    [Theory]
    [InlineData("salt", TablespoonsInCup, 18, 0.5)]
    [InlineData("honey", TablespoonsInCup, 21, 0.5)]
    [InlineData("milk", TablespoonsInCup, 15, 0.5)]
    [InlineData("salt", TeaspoonsInCup, 6.0, 0.1)]
    [InlineData("sugar", TeaspoonsInCup, 4.2, 0.05)]
    public void Spoon_as_part_of_a_cup_agrees_with_the_published_spoon(
        string ingredient, double spoons, double grams, double tolerance) =>
        Assert.Equal(grams, HouseholdWeights.Of(ingredient)!.GramsPerCup / spoons, tolerance);

    // Report 41's cup makes the teaspoon 2.96 g. A packet of 7.2 g (Standard Reference 28, n = 3) holds 2 1/4 tsp by
    // common practice, no source: 3.2 g, 8 % more. The Standard Reference's own teaspoon of 4.0 g is out of line.
    [Fact]
    public void Teaspoon_of_yeast_lies_nearer_the_packet_than_the_standard_references_teaspoon()
    {
        var teaspoon = HouseholdWeights.Of("yeast")!.GramsPerCup / TeaspoonsInCup;

        Assert.Equal(2.96, teaspoon, 0.005);
        Assert.True(Math.Abs(teaspoon - (7.2 / 2.25)) < Math.Abs(teaspoon - 4.0));
    }

    // 11.4 % between dipped and spooned bread flour (137 and 123) is why the filling is asked for; here 137 and 126.
    [Fact]
    public void Dipped_cup_is_heavier_than_a_spooned_one_and_that_heavier_than_a_sifted_one()
    {
        double Grams(FlourMeasure measure) => HouseholdWeights.OfFlour(measure)!.GramsPerCup;

        Assert.True(Grams(FlourMeasure.Scooped) > Grams(FlourMeasure.Spooned));
        Assert.True(Grams(FlourMeasure.Spooned) > Grams(FlourMeasure.Sifted));
    }

    [Fact]
    public void Weighed_flour_has_no_cup() => Assert.Null(HouseholdWeights.OfFlour(FlourMeasure.Weighed));

    [Theory]
    [InlineData("fat")]
    [InlineData("dough")]
    [InlineData("")]
    public void Ingredient_without_a_published_weight_has_none(string ingredient) =>
        Assert.Null(HouseholdWeights.Of(ingredient));
}
