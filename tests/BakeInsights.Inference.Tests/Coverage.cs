using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>How often intervals of 95 % hold the truth.</summary>
internal static class Coverage
{
    public const int DataSets = 4000;

    /// <summary>
    /// The count of hits is binomial with standard deviation sqrt(n 0.95 0.05), and a right method leaves four of them
    /// to either side once in 16,000 seeds.
    /// </summary>
    public static void IsNinetyFivePercent(int hits)
    {
        var margin = 4 * Math.Sqrt(DataSets * 0.95 * 0.05);
        Assert.InRange(hits, (0.95 * DataSets) - margin, (0.95 * DataSets) + margin);
    }
}
