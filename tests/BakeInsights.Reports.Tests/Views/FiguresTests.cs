using Xunit;

namespace BakeInsights.Reports.Tests;

public class FiguresTests
{
    [Theory]
    [InlineData(2.5, 0, "3")]
    [InlineData(-2.5, 0, "−3")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.4, 0, "0")]
    [InlineData(-0.06, 1, "−0.1")]
    [InlineData(1234.567, 2, "1234.57")]
    [InlineData(0, 2, "0.00")]
    public void Numbers_are_rounded_with_a_true_minus_sign_and_no_minus_zero(double value, int decimals, string text) =>
        Assert.Equal(text, Figures.Rounded(value, decimals));

    [Theory]
    [InlineData(-0.09550416, "−0.0955")]
    [InlineData(0.00547061, "0.00547")]
    [InlineData(4.62679, "4.63")]
    [InlineData(104.4, "104")]
    [InlineData(12345.6, "12346")]
    [InlineData(0, "0")]
    public void Coefficients_have_three_significant_digits(double value, string text) => Assert.Equal(text, Figures.Significant(value));

    [Fact]
    public void A_range_says_which_end_is_missing_and_puts_the_unit_behind_the_number()
    {
        Assert.Equal("2.1 to 2.9", Figures.Range(2.12, 2.88, 1));
        Assert.Equal("−11 to −8 %", Figures.Range(-11.2, -8.2, 0, "%"));
        Assert.Equal("68.5 % or more", Figures.Range(68.53, null, 1, "%"));
        Assert.Equal("70.7 or less", Figures.Range(null, 70.68, 1));
        Assert.Equal("no bounds", Figures.Range(null, null, 1, "%"));
    }

    [Fact]
    public void Values_are_shown_in_the_readers_units()
    {
        var metric = new Figures(UnitSystem.Metric);
        var us = new Figures(UnitSystem.Us);
        Assert.Equal("24.0 °C", metric.WithUnit(Dimension.Temperature, 24));
        Assert.Equal("75 °F", us.WithUnit(Dimension.Temperature, 24));

        // 1 cu in/oz is 0.57804 mL/g (from the exact ounce and cubic inch), so 4 mL/g are 6.92.
        Assert.Equal("4.00 mL/g", metric.WithUnit(Dimension.SpecificVolume, 4));
        Assert.Equal("6.92 cu in/oz", us.WithUnit(Dimension.SpecificVolume, 4));
        Assert.Equal("3.5", metric.WithUnit(Dimension.Number, 3.5));
        Assert.Equal("–", metric.Bare(Dimension.Temperature, null));
        Assert.Equal("Dough temperature (°F)", us.TitleOf(Measures.DoughTemperature));
        Assert.Equal("Crumb score", us.TitleOf(Measures.CrumbScore));
    }
}
