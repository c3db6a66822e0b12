using System.Globalization;
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
    [InlineData("Filip", 7.1, 6.8, 10.1, 12.3)]
    [InlineData("Longley", 11.0, 11.9, 11.9, 13.9)]
    [InlineData("Wampler1", 9.5, 15, 15, 15)]
    [InlineData("Wampler2", 12.8, 15, 15, 15)]
    [InlineData("Wampler3", 9.1, 12.5, 13.5, 14.5)]
    [InlineData("Wampler4", 7.2, 12.6, 14.3, 14.5)]
    [InlineData("Wampler5", 5.2, 12.6, 14.3, 12.4)]
    public void Fit_reaches_these_digits(
        string name, double coefficients, double deviations, double residual, double rSquared)
    {
        var set = new NistSet(name);

        Assert.InRange(set.CoefficientDigits, coefficients, 15);
        Assert.InRange(set.DeviationDigits, deviations, 15);
        Assert.InRange(set.ResidualDigits, residual, 15);
        Assert.InRange(set.RSquaredDigits, rSquared, 15);
    }

    [Fact]
    public void Published_table_of_digits_is_the_one_reached()
    {
        const string text = """
            # Digits reached on the NIST linear regressions

            The NIST Statistical Reference Datasets (https://www.itl.nist.gov/div898/strd/lls/lls.shtml)
            certify 15 digits of eleven linear regressions. The table counts how many of them
            `LeastSquares.Fit` gets right, working in plain double precision: minus the decimal
            logarithm of the relative error (of the absolute error where the certified value is 0), the
            worst of its kind, rounded down, at most 15. Filip and the Wampler sets are polynomials in
            raw powers of x, made to be hard: their columns nearly depend on each other, and the working
            precision sets the limit.

            SD = standard deviation.

            | data set | difficulty | rows | columns | coefficients | SD of coefficients | residual SD | R-squared |
            |---|---|---|---|---|---|---|---|

            """;

        var rows = NistSet.All.Select(entry =>
        {
            var set = new NistSet(entry.Name);
            double[] digits = [set.CoefficientDigits, set.DeviationDigits, set.ResidualDigits, set.RSquaredDigits];
            string[] cells =
            [
                entry.Name, entry.Difficulty, $"{set.Fit.N}", $"{set.Fit.Terms.Count}",
                .. digits.Select(d => Math.Floor(d).ToString(CultureInfo.InvariantCulture)),
            ];
            return $"| {string.Join(" | ", cells)} |\n";
        });

        Approved.Matches("docs/nist-digits.md", text + string.Concat(rows));
    }

    [Theory]
    [InlineData("NoInt1", false)]
    [InlineData("Norris", true)]
    public void RSquared_is_about_the_mean_only_with_a_constant(string name, bool centred) =>
        Assert.Equal(centred, new NistSet(name).Fit.RSquaredIsCentred);
}
