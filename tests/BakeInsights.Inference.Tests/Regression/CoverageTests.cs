using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Intervals on simulated data with a known truth.</summary>
public class CoverageTests
{
    private static readonly double[] X = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 30];

    [Fact]
    public void Ninety_five_percent_intervals_hold_the_truth_in_ninety_five_percent_of_data_sets()
    {
        var random = new Random(19081210);
        var design = new Design(DesignColumn.Constant(X.Length), new DesignColumn("x", X));
        int slope = 0, mean = 0, single = 0;
        for (var k = 0; k < Coverage.DataSets; k++)
        {
            var fit = LeastSquares.Fit(design, X.Select(x => Response(x, random)).ToArray()).Value;
            slope += fit.Terms[1].Interval(0.95).Contains(-0.5) ? 1 : 0;
            mean += fit.MeanInterval([1, 20], 0.95).Contains(3 - (0.5 * 20)) ? 1 : 0;
            single += fit.PredictionInterval([1, 20], 0.95).Contains(Response(20, random)) ? 1 : 0;
        }

        Coverage.IsNinetyFivePercent(slope);
        Coverage.IsNinetyFivePercent(mean);
        Coverage.IsNinetyFivePercent(single);
    }

    private static double Response(double x, Random random) => 3 - (0.5 * x) + Normal.Sample(random, 0, 2);
}
