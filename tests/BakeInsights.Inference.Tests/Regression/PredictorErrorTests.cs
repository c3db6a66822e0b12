using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class PredictorErrorTests
{
    [Fact]
    public void Slope_is_divided_by_the_reliability_of_the_readings()
    {
        // Readings with sample variance 2.5 and an error variance of 0.5: reliability 0.8.
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(5), new DesignColumn("probe", [1, 2, 3, 4, 5])), [2, 1, 4, 3, 5]).Value;

        var calibrated = PredictorError.Classical(fit, "probe", Math.Sqrt(0.5)).Value;

        Close.Relative(0.8, calibrated.Reliability.Estimate, 1e-14);
        Close.Relative(0.2 * Math.Sqrt(2.0 / 4), calibrated.Reliability.StandardError, 1e-14);
        Close.Relative(0.8 / 0.8, calibrated.Terms[1].Estimate, 1e-14);

        // The line still goes through the means, 3 and 3.
        Close.Absolute(0, calibrated.Terms[0].Estimate, 1e-14);
        Assert.True(calibrated.SlopeInterval(0.95).High - calibrated.SlopeInterval(0.95).Low
            > (fit.Terms[1].Interval(0.95).High - fit.Terms[1].Interval(0.95).Low) / 0.8);
        Assert.Equal("regression calibration", calibrated.Summary.Method);
    }

    [Fact]
    public void Coefficients_of_many_rows_come_back_where_least_squares_is_off()
    {
        const int rows = 200_000;
        var random = new Random(11);
        double[] other = [.. Normals(random, rows)];
        double[] truth = [.. other.Select(z => (0.5 * z) + Normal.Sample(random, 0, 1.5))];
        double[] readings = [.. truth.Select(x => x + Normal.Sample(random, 0, 1))];
        double[] y = [.. truth.Zip(other, (x, z) => 2 + (3 * x) - z + Normal.Sample(random, 0, 0.7))];
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(rows), new DesignColumn("z", other), new DesignColumn("probe", readings)),
            y).Value;

        var calibrated = PredictorError.Classical(fit, "probe", 1).Value;

        Close.Absolute(2, calibrated.Terms[0].Estimate, 0.03);
        Close.Absolute(-1, calibrated.Terms[1].Estimate, 0.04);
        Close.Absolute(3, calibrated.Terms[2].Estimate, 0.04);
        Close.Absolute(0.7, calibrated.ResidualStandardDeviation, 0.07);
        Close.Absolute(3 * 2.25 / 3.25, fit.Terms[2].Estimate, 0.03);
    }

    [Fact]
    public void Readings_that_vary_no_more_than_their_error_are_refused()
    {
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(5), new DesignColumn("probe", [1, 2, 3, 4, 5])), [2, 1, 4, 3, 5]).Value;

        Assert.False(PredictorError.Classical(fit, "probe", 2).TryGet(out _, out var problem));

        Assert.Equal((FitProblemKind.ErrorExceedsSpread, "probe"), (problem.Kind, problem.Columns[0]));
        Assert.Equal(
            "Column probe varies by 1.58 beside the other columns, no more than its error of 2.", problem.Message);
    }

    [Fact]
    public void Settings_met_with_an_error_keep_their_slope_and_share_the_residual_spread()
    {
        const int rows = 100_000;
        var random = new Random(12);
        double[] settings = [.. Enumerable.Range(0, rows).Select(i => (double)(i % 5))];
        double[] truth = [.. settings.Select(s => s + Normal.Sample(random, 0, 0.4))];
        double[] y = [.. truth.Select(x => 1 + (2 * x) + Normal.Sample(random, 0, 0.6))];
        var fit = LeastSquares.Fit(new Design(DesignColumn.Constant(rows), new DesignColumn("cup", settings)), y).Value;

        var scatter = PredictorError.Berkson(fit, "cup", 0.4);

        Close.Absolute(2, scatter.Slope.Estimate, 0.01);
        Close.Absolute(0.8, scatter.CarriedDeviation, 0.01);
        Close.Absolute(1, scatter.ResidualDeviation, 0.01);
        Close.Absolute(0.6, scatter.DeviationWithoutError, 0.02);
        Assert.Null(PredictorError.Berkson(fit, "cup", 1).DeviationWithoutError);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void Error_without_a_size_is_a_programming_error(double deviation)
    {
        var fit = LeastSquares.Fit(new Design(new DesignColumn("x", [1, 2, 3])), [1, 2, 2]).Value;

        Assert.Throws<ArgumentOutOfRangeException>(() => PredictorError.Berkson(fit, "x", deviation));
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictorError.Classical(fit, "x", deviation));
    }

    private static IEnumerable<double> Normals(Random random, int count) =>
        Enumerable.Range(0, count).Select(_ => Normal.Sample(random, 0, 1));
}
