using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// The level of the test; the coverage of the intervals is simulated in GroupSpreadTests of the statistics. Simulated classes: benches of three to five bakes each, rise times by dough temperature.
/// </summary>
public class GroupCoverageTests
{
    private const int Journals = 400;

    private static readonly double Margin = 4 * Math.Sqrt(0.05 * 0.95 / Journals);

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    public void Groups_that_are_alike_are_called_different_in_five_percent(int groups)
    {
        var wrong = Enumerable.Range(0, Journals).Average(seed => One(seed, groups).PValue <= 0.05 ? 1.0 : 0);
        Assert.Equal(0.05, wrong, Margin);
    }

    private static GroupAnswer One(int seed, int groups)
    {
        var random = new Random(seed);
        var bakes = Enumerable.Range(0, groups).SelectMany(g => Enumerable.Repeat(g, 3 + (g % 3))).Select((g, i) =>
        {
            var celsius = Math.Round(Normal.Sample(random, 24, 2), 1);
            var minutes = 90 * Math.Exp((-0.09 * (celsius - 24)) + Normal.Sample(random, 0, 0.1));
            return OwnColumnBakes.Of(i, minutes, celsius, $"bench {g}");
        });
        return GroupQuestion.Ask([.. bakes], Measures.RiseTime).Value;
    }
}
