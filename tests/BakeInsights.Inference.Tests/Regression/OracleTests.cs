using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Expected values computed by R with tests/reference-data/r/make.R.</summary>
public class OracleTests
{
    private const double Tolerance = 1e-11;

    [Fact]
    public void Stopping_distances_have_the_expected_line_and_intervals()
    {
        var data = ReferenceTable.Read("r/cars.csv");
        var expected = ReferenceTable.Read("r/cars-expected.csv");

        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("speed")), data.Numbers("distance")).Value;

        foreach (var term in fit.Terms)
        {
            Close.Relative(expected.Value(term.Name), term.Estimate, Tolerance);
            Close.Relative(expected.Value($"{term.Name} SE"), term.StandardError, Tolerance);
            Close.Relative(expected.Value($"{term.Name} p"), term.PValue, Tolerance);
            Close.Relative(expected.Value($"{term.Name} 99 low"), term.Interval(0.99).Low, Tolerance);
            Close.Relative(expected.Value($"{term.Name} 99 high"), term.Interval(0.99).High, Tolerance);
        }

        Close.Relative(expected.Value("covariance"), fit.Covariance(0, 1), Tolerance);
        foreach (var speed in new[] { 4, 15, 30 })
        {
            var mean = fit.MeanInterval([1, speed], 0.95);
            var single = fit.PredictionInterval([1, speed], 0.90);
            Close.Relative(expected.Value($"speed {speed} mean 95 low"), mean.Low, Tolerance);
            Close.Relative(expected.Value($"speed {speed} mean 95 high"), mean.High, Tolerance);
            Close.Relative(expected.Value($"speed {speed} new 90 low"), single.Low, Tolerance);
            Close.Relative(expected.Value($"speed {speed} new 90 high"), single.High, Tolerance);
        }
    }

    [Fact]
    public void Ammonia_losses_have_the_expected_leverages_residuals_and_partial_F()
    {
        var data = ReferenceTable.Read("r/stackloss.csv");
        var expected = ReferenceTable.Read("r/stackloss-expected.csv");
        var loss = data.Numbers("loss");
        var design = new Design(DesignColumn.Constant(data.RowCount), data.Column("air_flow"),
            data.Column("water_temperature"), data.Column("acid"));

        var fit = LeastSquares.Fit(design, loss).Value;
        var smaller = LeastSquares.Fit(design.Without("water_temperature", "acid"), loss).Value;
        var test = LeastSquares.Compare(smaller, fit);

        foreach (var term in fit.Terms)
        {
            Close.Relative(expected.Value(term.Name), term.Estimate, Tolerance);
            Close.Relative(expected.Value($"{term.Name} SE"), term.StandardError, Tolerance);
            Close.Relative(expected.Value($"{term.Name} p"), term.PValue, 1e-10);
        }

        for (var i = 0; i < fit.N; i++)
        {
            Close.Relative(expected.Value($"leverage {i + 1}"), fit.Leverage[i], Tolerance);
            Close.Relative(expected.Value($"residual {i + 1}"), fit.Residuals[i], Tolerance);
        }

        Close.Relative(expected.Value("residual SD"), fit.ResidualStandardDeviation, Tolerance);
        Close.Relative(expected.Value("R-squared"), fit.RSquared, Tolerance);
        Close.Relative(expected.Value("F of water_temperature and acid"), test.FValue, Tolerance);
        Close.Relative(expected.Value("p of water_temperature and acid"), test.PValue, 1e-10);
        Close.Relative(expected.Value("extra sum of squares"), test.ExtraSumOfSquares, Tolerance);
    }

    [Fact]
    public void Students_t_has_the_expected_critical_values()
    {
        var table = ReferenceTable.Read("r/student.csv");
        for (var i = 0; i < table.RowCount; i++)
        {
            var df = table.Numbers("df")[i];
            var high = new Term("unit", 0, 1, df).Interval(table.Numbers("level")[i]).High;

            // The incomplete beta function of Math.NET loses digits as its parameters grow.
            Close.Relative(table.Numbers("t")[i], high, df <= 1000 ? 1e-12 : 1e-9);
        }
    }
}
