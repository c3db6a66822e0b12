using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// NIST Statistical Reference Datasets, one-way analysis of variance, certified to 15 digits: SiRstv, SmLs01, SmLs02,
/// SmLs04, SmLs05, SmLs07 and SmLs08, after nist/certified-variance.csv.
/// </summary>
public class NistVarianceTests
{
    /// <summary>
    /// The SmLs sets from 04 on put tenths on a level of a million or a million million, and a double rounds the tenths
    /// away: the limit is what exact arithmetic on the rounded data reaches.
    /// </summary>
    [Theory]
    [InlineData("SiRstv", 12, 12)]
    [InlineData("SmLs01", 12, 12)]
    [InlineData("SmLs02", 12, 12)]
    [InlineData("SmLs04", 9, 9)]
    [InlineData("SmLs05", 9, 9)]
    [InlineData("SmLs07", 2.5, 2.5)]
    [InlineData("SmLs08", 2.5, 2.5)]
    public void Analysis_of_variance_reaches_the_digits_that_the_rounded_data_allow(
        string name, double digits, double limit)
    {
        var set = new NistVarianceSet(name);

        Assert.InRange(set.Digits, digits, 15);
        Assert.InRange(set.InputLimit, limit, 15);
        Assert.InRange(set.DigitsAgainstExact, 13.5, 15);
    }
}
