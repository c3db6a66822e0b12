using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Each rule as its source words it, on series of standard deviations from the centre.</summary>
public class RunSignalTests
{
    [Theory]
    [InlineData(RunRule.OneBeyondThree, new[] { 0, 3.1 }, 1, 1)]
    [InlineData(RunRule.TwoOfThreeBeyondTwo, new[] { 2.1, 0.0, 2.2 }, 0, 2)]
    [InlineData(RunRule.TwoOfThreeBeyondTwo, new[] { 0.0, -2.1, -2.2 }, 0, 2)]
    [InlineData(RunRule.FourOfFiveBeyondOne, new[] { 1.1, 1.2, -0.3, 1.5, 1.1 }, 0, 4)]
    [InlineData(RunRule.EightOnOneSide, new[] { -1, 0.1, 0.2, 0.3, 0.1, 0.2, 0.3, 0.1, 0.2 }, 1, 8)]
    [InlineData(RunRule.NineOnOneSide, new[] { -0.1, -0.2, -0.3, -0.1, -0.2, -0.3, -0.1, -0.2, -0.4 }, 0, 8)]
    [InlineData(RunRule.SixRisingOrFalling, new[] { 0.6, 0.5, 0.4, 0.3, 0.2, 0.1 }, 0, 5)]
    [InlineData(
        RunRule.FourteenAlternating,
        new[] { 0, 0.1, 0, 0.2, -0.1, 0.1, 0, 0.1, 0, 0.1, -0.2, 0.3, 0.1, 0.2 }, 0, 13)]
    [InlineData(
        RunRule.FifteenWithinOne,
        new[] { 0.1, -0.2, 0.9, -0.9, 0, 0.1, 0.2, 0.3, -0.4, 0.5, -0.6, 0.7, 0.2, 0.1, 0 }, 0, 14)]
    [InlineData(RunRule.EightBeyondOne, new[] { 1.1, -1.2, 1.3, 1.4, -1.5, 1.1, -1.2, 1.3 }, 0, 7)]
    public void Run_is_found_where_it_is_complete(RunRule rule, double[] z, int first, int last) =>
        Assert.Equal(
            new RunSignal(rule, first, last),
            Assert.Single(RunSignal.Find([.. z.Select(v => 10 + (2 * v))], 10, 2, [rule])));

    [Theory]
    [InlineData(RunRule.OneBeyondThree, new[] { 3.0, -2.9 })]
    [InlineData(RunRule.TwoOfThreeBeyondTwo, new[] { 2.1, 0.0, -2.2 })]
    [InlineData(RunRule.TwoOfThreeBeyondTwo, new[] { 2.1, 2.2, 0 })]
    [InlineData(RunRule.FourOfFiveBeyondOne, new[] { 1.1, 1.2, -1.3, -0.2, 1.1 })]
    [InlineData(RunRule.EightOnOneSide, new[] { 0.1, 0.2, 0.3, 0.0, 0.2, 0.3, 0.1, 0.2 })]
    [InlineData(RunRule.SixRisingOrFalling, new[] { 0.6, 0.5, 0.5, 0.3, 0.2, 0.1 })]
    [InlineData(RunRule.EightBeyondOne, new[] { 1.1, -1.2, double.NaN, 1.4, -1.5, 1.1, -1.2, 1.3 })]
    public void Run_that_falls_short_is_not_found(RunRule rule, double[] z) =>
        Assert.Empty(RunSignal.Find(z, 0, 1, [rule]));

    [Fact]
    public void Sets_of_rules_are_those_of_their_sources()
    {
        Assert.Equal(4, RunRules.WesternElectric.Count);
        Assert.Equal(8, RunRules.Nelson.Count);
    }

    [Fact]
    public void Spread_of_zero_is_refused() => Assert.StartsWith(
        "A standard deviation is above 0.",
        Assert.ThrowsAny<ArgumentException>(() => RunSignal.Find([1, 2], 1, 0, RunRules.Nelson)).Message);
}
