using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Expected values by R's boot on 200,000 resamples with tests/reference-data/r/resampling.R.</summary>
public class BootstrapOracleTests
{
    /// <summary>
    /// Ends of intervals from 200,000 and from 100,000 resamples differ by chance: by some 0.3 % of the interval's
    /// width, one standard deviation. Six of these are allowed.
    /// </summary>
    private const double ShareOfWidth = 0.02;

    private static readonly ReferenceTable Expected = ReferenceTable.Read("r/resampling-expected.csv");

    [Fact]
    public void Variance_of_spatial_scores_has_the_expected_intervals()
    {
        var scores = ReferenceTable.Read("r/spatial.csv").Numbers("score");

        Agrees("spatial", Bootstrap.Of("variance", scores.Length, Variance, new Resamples(100_000, 5)).Value);

        double? Variance(IReadOnlyList<int> rows)
        {
            var mean = rows.Average(i => scores[i]);
            return rows.Average(i => (scores[i] - mean) * (scores[i] - mean));
        }
    }

    [Fact]
    public void Slope_of_stopping_distances_has_the_expected_intervals()
    {
        var cars = ReferenceTable.Read("r/cars.csv");
        var design = new Design(DesignColumn.Constant(cars.RowCount), cars.Column("speed"));

        var refits = Bootstrap.LeastSquares(design, cars.Numbers("distance"), new Resamples(100_000, 6)).Value;

        Agrees("cars", refits.Of("speed").Value);
    }

    private static void Agrees(string name, BootstrapDistribution distribution)
    {
        double Value(string quantity)
        {
            var (cases, quantities) = (Expected.Texts("case"), Expected.Texts("quantity"));
            var row = Enumerable.Range(0, cases.Length).Single(i => cases[i] == name && quantities[i] == quantity);
            return Expected.Numbers("value")[row];
        }

        var percentile = distribution.Percentile(0.9).Value;
        var corrected = distribution.BiasCorrected(0.9).Value;
        var margin = ShareOfWidth * (Value("percentile high") - Value("percentile low"));
        Close.Relative(Value("estimate"), distribution.Estimate, 1e-7);
        Close.Absolute(Value("standard error"), distribution.StandardError, margin);
        Close.Absolute(Value("percentile low"), percentile.Low, margin);
        Close.Absolute(Value("percentile high"), percentile.High, margin);
        Close.Absolute(Value("corrected low"), corrected.Low, margin);
        Close.Absolute(Value("corrected high"), corrected.High, margin);
    }
}
