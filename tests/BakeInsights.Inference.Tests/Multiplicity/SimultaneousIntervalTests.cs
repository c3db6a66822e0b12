using Xunit;

namespace BakeInsights.Inference.Tests;

public class SimultaneousIntervalTests
{
    // Where ptukey(q, means, df) of R 4.2 is 0.95, by uniroot to its last digits. For three degrees of freedom ptukey is off by
    // 1e-6; there the value is that at which the double integral by R's integrate, asked for ten digits, is 0.95.
    [Theory]
    [InlineData(3, 9, 3.9484922024259)]
    [InlineData(5, 64, 3.96979174372442)]
    [InlineData(3, 3, 5.9095984533935)]
    [InlineData(10, 20, 5.00788266719501)]
    [InlineData(17, 500, 4.91658836657797)]
    public void Studentized_range_has_the_critical_values_of_R(int means, double df, double expected) =>
        Close.Relative(
        expected, SimultaneousInterval.OfPairs(new Term("a less b", 0, Math.Sqrt(2), df), means, 0.95).High, 1e-8);

    [Fact]
    public void Two_groups_have_Students_interval()
    {
        var term = new Term("a less b", 2, 0.7, 9);
        var (pair, one) = (SimultaneousInterval.OfPairs(term, 2, 0.95), SimultaneousInterval.OfCombinations(term, 1, 0.95));
        Close.Relative(term.Interval(0.95).Low, pair.Low, 1e-12);
        Close.Relative(term.Interval(0.95).High, one.High, 1e-9);
    }

    [Fact]
    public void Pairs_of_rise_heights_have_Tukeys_intervals()
    {
        // Lawson (2015), chapter 2; Tukey's intervals in R.
        var interval = SimultaneousInterval.OfPairs(new Term("40 less 35", 2.8125, 1.53093108923949 / Math.Sqrt(2), 9), 3, 0.95);
        Close.Relative(-0.209934734036452, interval.Low, 1e-5);
        Close.Relative(5.83493473403645, interval.High, 1e-6);
    }

    [Fact]
    public void What_can_not_be_compared_is_refused()
    {
        var term = new Term("a", 1, 1, 5);
        Assert.Throws<ArgumentOutOfRangeException>(() => SimultaneousInterval.OfPairs(term, 1, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimultaneousInterval.OfPairs(term, 3, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimultaneousInterval.OfCombinations(term, 0, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimultaneousInterval.OfCombinations(term, 2, 1));
    }
}
