using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Expected values integrated directly by R with tests/reference-data/r/prior.R, and by sums made here.
/// </summary>
public class PriorOracleTests
{
    private const double Tolerance = 1e-9;

    [Theory]
    [InlineData("slope")]
    [InlineData("both")]
    [InlineData("conflict")]
    public void Stopping_distances_have_the_expected_beliefs_and_conflict(string @case)
    {
        var data = ReferenceTable.Read("r/prior.csv");
        var design = new Design(
            DesignColumn.Constant(data.RowCount),
            new DesignColumn("speed", [.. data.Numbers("speed").Select(v => v - 10)]));
        NormalPrior[] priors = @case switch
        {
            "slope" => [new("speed", 3.5, 0.6)],
            "both" => [new("speed", 3.5, 0.6), new("constant", 10, 4)],
            _ => [new("speed", 3.5, 0.05)],
        };

        var fit = PriorRegression.Fit(design, data.Numbers("distance"), priors).Value;

        foreach (var c in fit.Coefficients)
        {
            Close.Relative(Expected(@case, $"{c.Name} mean"), c.Together.Mean, Tolerance);
            Close.Relative(Expected(@case, $"{c.Name} SD"), c.Together.StandardDeviation, Tolerance);
            Close.Relative(Expected(@case, $"{c.Name} 95 low"), c.Together.Interval(0.95).Low, Tolerance);
            Close.Relative(Expected(@case, $"{c.Name} 95 high"), c.Together.Interval(0.95).High, Tolerance);
            Assert.Equal(c.Prior is null, c.Conflict is null);
            if (c.Conflict is { } conflict)
            {
                Close.Relative(Expected(@case, $"{c.Name} conflict"), conflict.PValue, Tolerance);
            }
        }

        Close.Relative(Expected(@case, "joint conflict"), fit.JointConflict.PValue, Tolerance);
        Close.Relative(Expected(@case, "spread"), fit.Summary.ResidualStandardDeviation, Tolerance);
    }

    [Fact]
    public void Mean_of_a_sample_is_what_a_sum_over_mean_and_spread_gives()
    {
        double[] y = [61, 64, 58, 66];
        var (priorMean, priorSpread) = (70.0, 2.0);
        double total = 0, first = 0, second = 0, below = 0;
        var fit = PriorRegression.Fit(
            new Design(DesignColumn.Constant(4)), y, [new NormalPrior("constant", priorMean, priorSpread)]).Value;
        var high = fit.Coefficients[0].Together.Interval(0.9).High;

        // Prior 1 / s is even in ln s. The upper end lies on a border between cells.
        const double step = 0.04;
        for (var lnSpread = -1.5; lnSpread < 8; lnSpread += 0.04)
        {
            var s = Math.Exp(lnSpread);
            for (var mean = high - (step / 2) - 40; mean < 100; mean += step)
            {
                var density = Math.Exp(
                    (-4 * lnSpread) - (y.Sum(v => (v - mean) * (v - mean)) / (2 * s * s))
                    - ((mean - priorMean) * (mean - priorMean) / (2 * priorSpread * priorSpread)));
                total += density;
                first += density * mean;
                second += density * mean * mean;
                below += mean < high ? density : 0;
            }
        }

        var together = fit.Coefficients[0].Together;
        var expected = first / total;
        Close.Relative(expected, together.Mean, 1e-7);
        Close.Relative(Math.Sqrt((second / total) - (expected * expected)), together.StandardDeviation, 1e-5);
        Close.Absolute(0.95, below / total, 1e-5);
    }

    private static double Expected(string @case, string quantity)
    {
        var table = ReferenceTable.Read("r/prior-expected.csv");
        var row = table.Texts("case").Zip(table.Texts("quantity")).ToList().IndexOf((@case, quantity));
        return table.Numbers("value")[row];
    }
}
