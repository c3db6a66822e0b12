using Xunit;

namespace BakeInsights.Tests;

/// <summary>Cups weighed in the kitchen itself, against the published ones.</summary>
public class WeighedCupsTests
{
    private const double Tolerance = 1e-9;

    // Mean 130, sample variance (4 + 1 + 0 + 1 + 4) / 4 = 2.5, worked by hand.
    private static readonly double[] Dov = [128, 129, 130, 131, 132];

    [Fact]
    public void Person_with_five_cups_has_a_weight_of_their_own()
    {
        var cups = new WeighedCups([.. Of("Dov", Dov), .. Of("Mirre", 150, 150, 150, 150, 150)]);

        var weight = cups.OfFlour(FlourMeasure.Spooned, "dov ")!;

        Assert.Equal(130, weight.GramsPerCup, Tolerance);
        Assert.Equal("5 cups that Dov weighed", weight.Source);
        Assert.Equal(Math.Sqrt(2.5) / 130, weight.Spread!.OwnRelativeSd, Tolerance);
        Assert.Equal(Math.Sqrt(2.5 / 5) / 130, weight.Spread.SharedRelativeSd, Tolerance);
    }

    // Three people with means 120, 130, 140: variance between them 100, times 1 + 1/3 for a fourth; within, the sum of
    // squares is 3 x 2 over 3 x 1 degrees of freedom, and those are too few, so that 3 % is taken.
    [Fact]
    public void Person_who_was_not_weighed_gets_the_mean_of_the_people_and_their_spread()
    {
        var cups = new WeighedCups([.. Of("Dov", 119, 121), .. Of("Mirre", 129, 131), .. Of("Teodor", 139, 141)]);

        var weight = cups.OfFlour(FlourMeasure.Spooned, "Anselma")!;

        Assert.Equal(130, weight.GramsPerCup, Tolerance);
        Assert.Equal("6 cups that 3 people weighed", weight.Source);
        Assert.Equal(Math.Sqrt(100 * 4 / 3.0) / 130, weight.Spread!.SharedRelativeSd, Tolerance);
        Assert.Equal(0.03, weight.Spread.OwnRelativeSd, Tolerance);
        Assert.Equal(weight, cups.OfFlour(FlourMeasure.Spooned, null));
    }

    // Each person counts once, however many cups: (130 + 150) / 2. Two people don't show how people differ.
    [Fact]
    public void Of_two_people_the_spread_between_people_is_the_published_one()
    {
        var weight = new WeighedCups([.. Of("Dov", Dov), .. Of("Mirre", 150)]).OfFlour(FlourMeasure.Spooned, "Teodor")!;

        Assert.Equal(140, weight.GramsPerCup, Tolerance);
        Assert.Equal(HouseholdWeights.OfFlour(FlourMeasure.Spooned)!.Spread!.SharedRelativeSd, weight.Spread!.SharedRelativeSd);
        Assert.Equal(Math.Sqrt(2.5) / 140, weight.Spread.OwnRelativeSd, Tolerance);
    }

    [Fact]
    public void Fewer_than_five_cups_of_a_kind_are_no_weight()
    {
        Assert.Null(new WeighedCups(Of("Dov", 128, 129, 130, 131)).OfFlour(FlourMeasure.Spooned, "Dov"));
        Assert.Null(new WeighedCups(Of("Dov", Dov)).OfFlour(FlourMeasure.Scooped, "Dov"));
        Assert.Null(new WeighedCups([]).OfFlour(FlourMeasure.Spooned, "Dov"));
        Assert.False(new WeighedCups([]).Any);
    }

    [Fact]
    public void Other_ingredient_has_the_mean_of_all_its_cups()
    {
        var cups = new WeighedCups([.. Dov.Select(grams => new CupWeighing("Dov", "Sugar", null, grams))]);

        Assert.Equal(130, cups.Of("sugar")!.GramsPerCup, Tolerance);
        Assert.Null(cups.Of("salt"));
    }

    // 250 mL hold 250/236.588 as much as the US cup: 133 x 236.588 / 250 = 125.865.
    [Fact]
    public void Weighing_in_another_cup_is_brought_to_the_US_one()
    {
        Assert.Equal(
            125.865, CupWeighing.In("Dov", "flour", FlourMeasure.Spooned, MeasureUnits.MetricCup, 133).GramsPerCup, 5e-4);
        Assert.Throws<ArgumentException>(() => CupWeighing.In("Dov", "flour", null, MeasureUnits.Ounce, 133));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Cup_without_a_weight_is_a_programming_error(double grams) =>
        Assert.Throws<ArgumentException>(() => new WeighedCups(Of("Dov", grams)));

    private static IReadOnlyList<CupWeighing> Of(string person, params double[] grams) =>
        [.. grams.Select(each => new CupWeighing(person, "flour", FlourMeasure.Spooned, each))];
}
