using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Fits at the edges: perfect ones, many rows, nearly dependent columns, very large numbers.</summary>
public class FitLimitTests
{
    [Fact]
    public void Perfect_fit_has_no_t_and_no_p_and_intervals_of_no_width()
    {
        var fit = LeastSquares.Fit(
            new Design(DesignColumn.Constant(4), new DesignColumn("x", [1, 2, 3, 4])), [0.1, 0.2, 0.3, 0.4]).Value;

        Assert.Equal(0, fit.ResidualStandardDeviation);
        Assert.Equal(1, fit.RSquared);
        Assert.Equal([0, 0, 0, 0], fit.Residuals);
        Assert.Equal(0, fit.Terms[0].Estimate);
        Close.Relative(0.1, fit.Terms[1].Estimate, 1e-15);
        Assert.All(fit.Terms, term => Assert.Equal((0.0, null, null), (term.StandardError, term.TValue, term.PValue)));
        Assert.Equal(0, fit.Covariance(0, 1));
        Assert.Equal(fit.MeanInterval([1, 9], 0.95), fit.PredictionInterval([1, 9], 0.95));
    }

    [Fact]
    public void Comparison_with_a_perfect_fit_has_no_F_and_no_p()
    {
        var design = new Design(DesignColumn.Constant(4), new DesignColumn("x", [1, 2, 3, 4]));

        var test = LeastSquares.Compare(
            LeastSquares.Fit(design.Select("constant"), [3, 5, 7, 9]).Value,
            LeastSquares.Fit(design, [3, 5, 7, 9]).Value);

        Close.Relative(20, test.ExtraSumOfSquares, 1e-14);
        Assert.Equal((null, null), (test.FValue, test.PValue));
    }

    [Fact]
    public void Hundred_thousand_rows_of_eight_columns_are_fitted()
    {
        const int rows = 100_000;
        var random = new Random(8);
        double[] Draw() => [.. Enumerable.Range(0, rows).Select(_ => 20 + Normal.Sample(random, 0, 1))];
        var design = new Design(
            [DesignColumn.Constant(rows), .. Enumerable.Range(1, 7).Select(j => new DesignColumn($"x{j}", Draw()))]);
        var exact = Enumerable.Range(0, rows).Select(i => design.Columns.Sum(c => c.Values[i])).ToArray();

        var fit = LeastSquares.Fit(design, exact.Select(y => y + Normal.Sample(random, 0, 1)).ToArray()).Value;
        var perfect = LeastSquares.Fit(design, exact).Value;
        var dependent = LeastSquares.Fit(new Design([.. design.Columns, new DesignColumn("sum", exact)]), exact);

        // The standard error of a slope is 1/sqrt(n) = 0.0032 and that of the residual spread 0.0022.
        Assert.All(fit.Terms.Skip(1), term => Close.Absolute(1, term.Estimate, 0.015));
        Close.Absolute(1, fit.ResidualStandardDeviation, 0.01);
        Close.Absolute(8, fit.Leverage.Sum(), 1e-9);
        Assert.Equal(0, perfect.ResidualSumOfSquares);
        Assert.False(dependent.TryGet(out _, out var problem));
        Assert.Equal(["sum", .. design.Names], problem.Columns);
    }

    [Fact]
    public void Column_that_differs_from_an_earlier_one_by_a_billionth_is_not_dependent()
    {
        double[] x = [1, 2, 3, 4, 5, 6];
        double[] nudge = [1, -1, 2, 0, -2, 1];
        var twin = x.Zip(nudge, (v, d) => v * (1 + (1e-9 * d))).ToArray();

        var fit = LeastSquares.Fit(
            new Design(new DesignColumn("x", x), new DesignColumn("twin", twin)), [2, 1, 4, 3, 6, 5]);

        Assert.True(fit.Succeeded);
    }

    [Fact]
    public void Small_spread_on_a_large_level_is_not_taken_for_rounding()
    {
        // In the manner of NIST's analysis-of-variance set SmLs07: values about 1e12 that differ by tenths.
        double[] tenths = [0.4, 0.3, 0.5, 0.4, 0.3, 0.5, 0.4];
        var y = tenths.Select(t => 1_000_000_000_000 + t).ToArray();

        var fit = LeastSquares.Fit(new Design(DesignColumn.Constant(y.Length)), y).Value;

        // Squared deviations of 4 x 0.01 over 6 degrees of freedom; the spacing of doubles at 1e12 is 1.2e-4.
        Close.Relative(Math.Sqrt(0.04 / 6), fit.ResidualStandardDeviation, 2e-3);
    }

    [Theory]
    [InlineData(1e75, 1e-75)]
    [InlineData(1e-75, 1e75)]
    [InlineData(1e75, 1e75)]
    [InlineData(1e-75, 1e-75)]
    public void Numbers_at_the_ends_of_the_range_give_finite_results(double xUnit, double yUnit)
    {
        double[] x = [.. new[] { 0.1, 0.2, 0.5, 0.7, 1.0 }.Select(v => v * xUnit)];
        double[] y = [.. new[] { 0.3, 0.2, 0.9, 1.0, 0.8 }.Select(v => v * yUnit)];

        var fit = LeastSquares.Fit(new Design(DesignColumn.Constant(5), new DesignColumn("x", x)), y).Value;

        Assert.All(fit.Terms, term => Assert.True(
            double.IsFinite(term.Estimate) && double.IsFinite(term.StandardError) && term.PValue is > 0 and < 1));
        Assert.True(double.IsFinite(fit.Covariance(1, 1)) && fit.RSquared is > 0 and < 1);
    }
}
