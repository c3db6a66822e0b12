using Xunit;

namespace BakeInsights.Tests;

/// <summary>Units against the figures of NIST: Handbook 44, Appendix C, and Special Publication 811.</summary>
public class PublishedUnitTests
{
    // The digits as printed: half a unit of the last place.
    [Theory]
    [InlineData("oz", 28.349523, 5e-7)]
    [InlineData("lb", 453.59237, 1e-9)]
    [InlineData("kg", 1000, 0)]
    [InlineData("cu in", 16.387064, 1e-9)]
    [InlineData("cup", 236.5882365, 1e-9)]
    [InlineData("tbsp", 14.78676478, 5e-9)]
    [InlineData("tsp", 4.92892159, 5e-9)]
    [InlineData("h", 60, 0)]
    [InlineData("cm", 10, 1e-12)]
    [InlineData("in", 25.4, 1e-12)]
    public void Unit_in_canonical_units_is_as_published(string unit, double expected, double tolerance) =>
        Assert.Equal(expected, MeasureUnits.WithText(unit)!.ToCanonical(1), tolerance);

    // The rounded figures a kitchen knows: NIST, "Metric Household" (from Special Publication 430).
    [Theory]
    [InlineData("cup", 237, 0.5)]
    [InlineData("tbsp", 15, 0.5)]
    [InlineData("tsp", 4.9, 0.05)]
    public void Household_measure_rounds_to_the_millilitres_of_the_kitchen_table(
        string unit, double expected, double tolerance) =>
        Assert.Equal(expected, MeasureUnits.WithText(unit)!.ToCanonical(1), tolerance);

    // Nutrition labelling, 21 CFR 101.9(b)(5)(viii): cup 240 mL, tablespoon 15 mL, teaspoon 5 mL. The metric cup of
    // 250 mL and spoons of 15 and 5 mL are common practice, no source.
    [Theory]
    [InlineData("label cups", 240)]
    [InlineData("label tbsp", 15)]
    [InlineData("label tsp", 5)]
    [InlineData("metric cup", 250)]
    [InlineData("metric tbsp", 15)]
    [InlineData("metric tsp", 5)]
    public void Cup_and_spoons_of_labels_and_of_metric_kitchens_are_their_own_units(string unit, double millilitres) =>
        Assert.Equal(millilitres, MeasureUnits.WithText(unit)!.ToCanonical(1));

    // A gallon is 231 cubic inches exactly, and 16 cups (NIST Handbook 44, Appendix C).
    [Fact]
    public void Sixteen_cups_are_231_cubic_inches() =>
        Assert.Equal(MeasureUnits.CubicInch.ToCanonical(231), MeasureUnits.Cup.ToCanonical(16), 1e-9);

    // The defining points of the two scales: melting ice, boiling water, and where both read the same.
    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(75, 23.8889)]
    public void Fahrenheit_is_read_on_the_Celsius_scale(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, MeasureUnits.Fahrenheit.ToCanonical(fahrenheit), 5e-5);

    // From the ounce and the cubic inch above: 16.387064 / 28.349523 = 0.57804.
    [Fact]
    public void Cubic_inch_an_ounce_is_0_57804_millilitres_a_gram() =>
        Assert.Equal(1, DisplayUnit.For(Dimension.SpecificVolume, UnitSystem.Us).Value(0.57804), 1e-5);
}
