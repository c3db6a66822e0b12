using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class RiseCurveTests
{
    private static readonly Gen<RiseCurve> AnyCurve = Gen.Select(
        Gen.Double[0.5, 4], Gen.Double[0.005, 0.05], Gen.Double[0, 60], Gen.Bool,
        (ceiling, slope, lag, isGompertz) =>
            isGompertz ? (RiseCurve)new GompertzRise(ceiling, slope, lag) : new LogisticRise(ceiling, slope, lag));

    [Fact]
    public void Minutes_to_a_rise_are_the_inverse_of_the_rise() => Gen.Select(AnyCurve, Gen.Double[0.01, 0.99]).Sample((curve, part) =>
        Math.Abs(curve.Rise(curve.MinutesTo(part * curve.Ceiling)!.Value) - (part * curve.Ceiling)) < 1e-9);

    [Fact]
    public void The_slope_is_the_derivative_of_the_rise() => Gen.Select(AnyCurve, Gen.Double[0, 200]).Sample((curve, minute) =>
        Math.Abs(curve.Slope(minute) - ((curve.Rise(minute + 1e-4) - curve.Rise(minute - 1e-4)) / 2e-4)) < 1e-7);

    [Fact]
    public void The_slope_is_greatest_where_the_curve_says() => Gen.Select(AnyCurve, Gen.Double[-100, 400]).Sample((curve, minute) =>
        curve.Slope(minute) <= curve.SteepestPerMin * (1 + 1e-12)
        && Math.Abs(curve.Slope(curve.SteepestAtMin) - curve.SteepestPerMin) < 1e-12);

    [Fact]
    public void The_steepest_tangent_leaves_zero_at_the_lag() => AnyCurve.Sample(curve =>
        Math.Abs(curve.Rise(curve.SteepestAtMin) - (curve.SteepestPerMin * (curve.SteepestAtMin - curve.LagMin))) < 1e-9);

    [Fact]
    public void A_rise_stays_between_zero_and_its_ceiling() => Gen.Select(AnyCurve, Gen.Double[-1e5, 1e5]).Sample((curve, minute) =>
        curve.Rise(minute) >= 0 && curve.Rise(minute) <= curve.Ceiling && double.IsFinite(curve.Slope(minute)));

    [Fact]
    public void There_is_no_time_to_a_rise_at_or_above_the_ceiling()
    {
        RiseCurve low = new GompertzRise(0.9, 0.02, 10);
        Assert.Null(low.DoublingMin);
        Assert.Null(low.MinutesTo(0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => low.MinutesTo(0));
    }

    [Theory]
    [InlineData(0, 0.02, 10)]
    [InlineData(1, 0, 10)]
    [InlineData(1, 0.02, double.NaN)]
    public void A_curve_that_does_not_rise_is_refused(double ceiling, double slope, double lag)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new GompertzRise(ceiling, slope, lag));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LogisticRise(ceiling, slope, lag));
    }
}
