using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>NIST Statistical Reference Datasets, linear regression: certified to 15 digits, public domain.</summary>
public class NistTests
{
    /// <summary>The least digits over coefficients, their standard deviations, residual spread and R-squared.</summary>
    [Theory]
    [InlineData("Norris", 13.2, 13.3, 13.4, 14.5)]
    [InlineData("Pontius", 12.8, 13.0, 13.0, 14.5)]
    [InlineData("NoInt1", 14.2, 14.5, 14.5, 14.5)]
    [InlineData("NoInt2", 14.5, 14.4, 14.5, 14.5)]
    [InlineData("Filip", 13.2, 13.2, 13.2, 14)]
    [InlineData("Longley", 13.2, 13.2, 13.2, 14)]
    [InlineData("Wampler1", 15, 15, 15, 15)]
    [InlineData("Wampler2", 12.8, 15, 15, 15)]
    [InlineData("Wampler3", 14, 14, 14, 14.5)]
    [InlineData("Wampler4", 14, 14, 14, 14.5)]
    [InlineData("Wampler5", 14, 14, 14, 14.5)]
    public void Fit_reaches_these_digits(
        string name, double coefficients, double deviations, double residual, double rSquared)
    {
        var set = new NistSet(name);

        Assert.InRange(set.CoefficientDigits, coefficients, 15);
        Assert.InRange(set.DeviationDigits, deviations, 15);
        Assert.InRange(set.ResidualDigits, residual, 15);
        Assert.InRange(set.RSquaredDigits, rSquared, 15);
    }

    /// <summary>
    /// A fit can't know the data better than their doubles do. Wampler1 and Wampler2 aren't here: they lie on their
    /// curves but for the rounding, which a fit takes for what it is and exact arithmetic doesn't.
    /// </summary>
    [Theory]
    [InlineData("Norris")]
    [InlineData("Pontius")]
    [InlineData("NoInt1")]
    [InlineData("NoInt2")]
    [InlineData("Filip")]
    [InlineData("Longley")]
    [InlineData("Wampler3")]
    [InlineData("Wampler4")]
    [InlineData("Wampler5")]
    public void Fit_agrees_with_exact_rational_arithmetic_on_the_same_doubles(string name) =>
        Assert.InRange(new NistSet(name).DigitsAgainstExact, 12.5, 15);

    [Fact]
    public void Rounding_of_the_data_alone_leaves_Filip_thirteen_digits() =>
        Assert.InRange(new NistSet("Filip").InputLimit, 13.2, 15);

    [Fact]
    public void Published_page_of_digits_is_the_one_reached() =>
        Approved.Matches("docs/nist-digits.md", NistDigits.Page());

    [Theory]
    [InlineData("NoInt1", false)]
    [InlineData("Norris", true)]
    public void RSquared_is_about_the_mean_only_with_a_constant(string name, bool centred) =>
        Assert.Equal(centred, new NistSet(name).Fit.RSquaredIsCentred);
}
