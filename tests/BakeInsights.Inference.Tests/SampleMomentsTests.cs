using Xunit;

namespace BakeInsights.Inference.Tests;

public class SampleMomentsTests
{
    /// <summary>
    /// The univariate sets of the NIST Statistical Reference Datasets, after nist/certified-univariate.csv. Tenths on a
    /// million are rounded in NumAcc3: the exact spread of the rounded data has no more digits than ours.
    /// </summary>
    [Theory]
    [InlineData("Lew", 15, 14.5, 14.5, 14.5)]
    [InlineData("Lottery", 14.5, 14.5, 14.5, 14.5)]
    [InlineData("NumAcc1", 15, 15, 15, 15)]
    [InlineData("NumAcc2", 15, 14, 14, 14)]
    [InlineData("NumAcc3", 15, 9, 12, 9)]
    [InlineData("PiDigits", 15, 14.5, 14.5, 14.5)]
    public void Moments_reach_the_digits_that_the_rounded_data_allow(
        string name, double mean, double spread, double serial, double limit)
    {
        var sample = new NistSample(name);

        Assert.InRange(sample.MeanDigits, mean, 15);
        Assert.InRange(sample.SpreadDigits, spread, 15);
        Assert.InRange(sample.SerialDigits, serial, 15);
        Assert.InRange(sample.SpreadLimit, limit, 15);
        Assert.InRange(sample.SpreadDigitsAgainstExact, 15, 15);
    }

    [Fact]
    public void Single_value_has_no_spread() =>
        Assert.Equal(new SampleMoments(1, 0.3, null, null), SampleMoments.Of([0.3]));

    [Fact]
    public void Equal_values_have_no_serial_correlation() =>
        Assert.Equal(new SampleMoments(3, 0.1, 0, null), SampleMoments.Of([0.1, 0.1, 0.1]));

    [Fact]
    public void Nothing_and_numbers_that_are_not_finite_are_programming_errors()
    {
        Assert.Throws<ArgumentException>(() => SampleMoments.Of([]));
        Assert.Throws<ArgumentException>(() => SampleMoments.Of([1, double.NaN]));
    }
}
