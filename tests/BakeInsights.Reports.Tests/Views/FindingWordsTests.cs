using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>Findings in a baker's words, from their numbers.</summary>
public class FindingWordsTests
{
    private static readonly Finding Yeast = new()
    {
        Name = "rise_time.yeast",
        Question = "Was the first rise quicker or slower with more yeast?",
        Result = Measures.RiseTime,
        Contrast = Contrast.Times(Measures.Yeast, 1.25),
        Effect = new Estimate(-19.4, -23.1, -15.5),
        EffectPct = new Estimate(-18.6, -22.1, -14.9),
        PValue = 0.001,
        Bakes = [],
        NextStep = "Bake.",
    };

    [Theory]
    [InlineData(1.25, "A quarter more yeast: rise time 19.4 min shorter")]
    [InlineData(1.1, "10 % more yeast: rise time 19.4 min shorter")]
    [InlineData(0.8, "20 % less yeast: rise time 19.4 min shorter")]
    public void A_factor_is_said_as_how_much_more(double factor, string words) => Assert.StartsWith(
        words,
        FindingWords.Sentence(Yeast with { Contrast = Contrast.Times(Measures.Yeast, factor) }, new Figures(UnitSystem.Metric)),
        StringComparison.Ordinal);

    [Theory]
    [InlineData(UnitSystem.Metric, "Dough temperature 2 °C higher: ")]
    [InlineData(UnitSystem.Us, "Dough temperature 3.6 °F higher: ")]
    public void A_step_is_said_in_the_units_of_the_reader(UnitSystem units, string words) => Assert.StartsWith(
        words,
        FindingWords.Sentence(Yeast with { Contrast = Contrast.More(Measures.DoughTemperature, 2) }, new Figures(units)),
        StringComparison.Ordinal);

    [Fact]
    public void A_step_of_a_percentage_is_in_points_and_of_a_time_longer()
    {
        var figures = new Figures(UnitSystem.Metric);
        Assert.StartsWith(
            "Hydration 3 points higher: ", FindingWords.Sentence(Yeast with { Contrast = Contrast.More(Measures.Hydration, 3) }, figures), StringComparison.Ordinal);
        Assert.StartsWith(
            "Proof time 5 min longer: ", FindingWords.Sentence(Yeast with { Contrast = Contrast.More(Measures.ProofTime, 5) }, figures), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "100 of 100")]
    [InlineData(0.44, "44 of 100")]
    [InlineData(0.1, "10 of 100")]
    [InlineData(0.0231, "1 of 43")]
    [InlineData(0.0003, "1 of 3,300")]
    [InlineData(0.0001, "1 of 10,000")]
    [InlineData(0.00009, "fewer than 1 of 10,000")]
    [InlineData(0, "fewer than 1 of 10,000")]
    public void A_chance_is_said_as_how_many_of_a_number(double p, string words) => Assert.Equal(words, Figures.Chance(p));
}
