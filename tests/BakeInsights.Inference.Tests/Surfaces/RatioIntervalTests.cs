using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class RatioIntervalTests
{
    /// <summary>With one degree of freedom the middle half of Student's t lies between -1 and 1.</summary>
    private const double LevelOfUnitT = 0.5;

    [Theory]
    [InlineData(104, 0.95, 103.995, 103.4, 104.6, 103.404051142412, 104.589459384664)]
    [InlineData(100, 0.90, 100.1, 99.63, 100.59, 99.6294028953122, 100.588503132254)]
    public void Temperature_of_one_thermometer_reading_is_the_published_one(
        double reading, double level, double printed, double printedLow, double printedHigh, double low, double high)
    {
        var fit = ThermometerFit();
        var above = fit.Combination([-1, 0]);
        var single = above with
        {
            Estimate = reading + above.Estimate,
            StandardError = double.Hypot(above.StandardError, fit.ResidualStandardDeviation),
        };

        var ratio = RatioInterval.Fieller(single, fit.Terms[1], fit.Covariance([-1, 0], [0, 1]), level);

        // Graybill and Iyer (1994), p. 431, in the digits printed there; the further digits by root finding in R.
        Close.Absolute(printed, ratio.Estimate, 0.05);
        Close.Absolute(printedLow, ratio.Low, 0.05);
        Close.Absolute(printedHigh, ratio.High, 0.05);
        Close.Relative(low, ratio.Low, 1e-11);
        Close.Relative(high, ratio.High, 1e-11);
        Assert.Equal(RatioSetKind.Bounded, ratio.Kind);
    }

    [Fact]
    public void Temperature_of_a_mean_reading_has_the_expected_interval()
    {
        var fit = ThermometerFit();
        var above = fit.Combination([-1, 0]);

        var ratio = RatioInterval.Fieller(
            above with { Estimate = 104 + above.Estimate }, fit.Terms[1], fit.Covariance([-1, 0], [0, 1]), 0.95);

        // Root finding on the confidence band in R.
        Close.Relative(103.994915645944, ratio.Estimate, 1e-12);
        Close.Relative(103.795104475359, ratio.Low, 1e-12);
        Close.Relative(104.198406051717, ratio.High, 1e-12);
    }

    /// <summary>By hand: with unit errors and t = 1 the set is (b^2 - 1) r^2 - 2 a b r + a^2 - 1 at most 0.</summary>
    [Fact]
    public void Denominator_far_from_zero_gives_a_bounded_set()
    {
        var ratio = Unit(1, 2);

        Assert.Equal(RatioSetKind.Bounded, ratio.Kind);
        Assert.Equal(0.5, ratio.Estimate);
        Close.Absolute(0, ratio.Low, 1e-14);
        Close.Relative(4.0 / 3, ratio.High, 1e-14);
        Assert.Null(ratio.Gap);
    }

    [Fact]
    public void Denominator_near_zero_gives_two_rays_around_a_gap()
    {
        var ratio = Unit(2, 0.5);

        Assert.Equal(RatioSetKind.TwoRays, ratio.Kind);
        Assert.Null(ratio.Low);
        Assert.Null(ratio.High);
        Close.Relative((-2 - Math.Sqrt(13)) / 1.5, ratio.Gap?.Low, 1e-14);
        Close.Relative((-2 + Math.Sqrt(13)) / 1.5, ratio.Gap?.High, 1e-14);
        Assert.True(ratio.Contains(4));
        Assert.True(ratio.Contains(-4));
        Assert.False(ratio.Contains(0));
    }

    [Fact]
    public void Nothing_far_from_zero_gives_the_whole_line()
    {
        var ratio = Unit(0.5, 0.5);

        Assert.Equal(RatioSetKind.WholeLine, ratio.Kind);
        Assert.Equal((null, null, null), (ratio.Low, ratio.High, ratio.Gap));
        Assert.True(ratio.Contains(1e9));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Denominator_at_the_edge_gives_one_ray(int sign)
    {
        var unitT = new Term("t", 0, 1, 1).Interval(LevelOfUnitT).High;

        var ratio = Unit(2, sign * unitT);

        Assert.Equal(RatioSetKind.OneRay, ratio.Kind);
        Close.Relative(sign * 0.75, sign > 0 ? ratio.Low : ratio.High, 1e-12);
        Assert.Null(sign > 0 ? ratio.High : ratio.Low);
    }

    [Fact]
    public void Denominator_of_zero_has_a_set_but_no_estimate()
    {
        var ratio = Unit(2, 0);

        Assert.Null(ratio.Estimate);
        Close.Relative(-Math.Sqrt(3), ratio.Gap?.Low, 1e-14);
        Close.Relative(Math.Sqrt(3), ratio.Gap?.High, 1e-14);
    }

    [Fact]
    public void Estimates_without_error_give_a_single_ratio()
    {
        var ratio = RatioInterval.Fieller(new Term("a", 3, 0, 5), new Term("b", -2, 0, 5), 0, 0.95);

        Assert.Equal((-1.5, -1.5, -1.5), (ratio.Estimate, ratio.Low, ratio.High));
    }

    [Fact]
    public void Set_holds_the_ratios_that_a_t_test_does_not_reject()
    {
        var t = new Term("t", 0, 1, 7).Interval(0.9).High;
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[0.1, 3], Gen.Double[0.1, 3], Gen.Double[-1, 1],
            Gen.Double[-20, 20]).Sample((a, b, sa, sb, correlation, r) =>
        {
            var covariance = correlation * sa * sb;
            var set = RatioInterval.Fieller(new Term("a", a, sa, 7), new Term("b", b, sb, 7), covariance, 0.9);
            var distance = Math.Abs(a - (r * b));
            var limit = t * Math.Sqrt((sa * sa) - (2 * r * covariance) + (r * r * sb * sb));

            // A ratio at an end of the set may fall to either side by rounding.
            return Math.Abs(distance - limit) < 1e-9 || set.Contains(r) == distance < limit;
        });
    }

    [Fact]
    public void Arguments_that_contradict_each_other_are_refused()
    {
        var one = new Term("a", 1, 1, 5);

        Assert.StartsWith("Numerator and denominator differ in degrees of freedom.",
            Refusal(() => RatioInterval.Fieller(one, one with { DegreesOfFreedom = 6 }, 0, 0.95)));
        Assert.StartsWith("The denominator is exactly zero, so there is no ratio.",
            Refusal(() => RatioInterval.Fieller(one, new Term("b", 0, 0, 5), 0, 0.95)));
        Assert.StartsWith("The covariance exceeds the product of the standard errors.",
            Refusal(() => RatioInterval.Fieller(one, one, 1.1, 0.95)));
        Assert.StartsWith("A level lies between 0 and 1, such as 0.95.",
            Refusal(() => RatioInterval.Fieller(one, one, 0, 95)));
    }

    private static string Refusal(Action action) => Assert.ThrowsAny<ArgumentException>(action).Message;

    private static RatioInterval Unit(double numerator, double denominator) =>
        RatioInterval.Fieller(new Term("a", numerator, 1, 1), new Term("b", denominator, 1, 1), 0, LevelOfUnitT);

    private static LeastSquaresFit ThermometerFit()
    {
        var data = ReferenceTable.Read("calibration/thermometer.csv");
        return LeastSquares.Fit(
            new Design(DesignColumn.Constant(data.RowCount), data.Column("true_temperature_f")),
            data.Numbers("reading_f")).Value;
    }
}
