using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class TemperatureResponseTests
{
    private static readonly CardinalResponse Growth = CardinalResponse.YeastGrowth;

    // Relative growth with 2.8, 32.3 and 45.4 °C, worked out apart from this code.
    [Theory]
    [InlineData(10, 0.135)]
    [InlineData(15, 0.346)]
    [InlineData(18, 0.495)]
    [InlineData(22, 0.696)]
    [InlineData(24, 0.788)]
    [InlineData(26, 0.869)]
    [InlineData(28, 0.935)]
    [InlineData(40, 0.702)]
    public void Growth_of_yeast_has_the_published_shape(double c, double rate) => Assert.Equal(rate, Growth.Rate(C(c)), 6e-4);

    // Over the next degree, worked out apart: +8.4 % at 20 °C, +4.7 at 25, +2.7 at 28.
    [Theory]
    [InlineData(20, 8.4)]
    [InlineData(25, 4.7)]
    [InlineData(28, 2.7)]
    public void Growth_is_much_flatter_than_the_trades_ten_percent(double c, double percent)
    {
        Assert.Equal(percent, TemperatureSpan.Of(Growth, C(c), C(c + 1))!.PercentPerDegree, 0.05);
    }

    [Fact]
    public void Growth_is_fastest_at_its_best_temperature_and_none_at_the_ends() => Gen.Double[-10, 60].Sample(c =>
    {
        var rate = Growth.Rate(C(c));
        return rate is >= 0 and <= 1 && (rate > 0) == (c > 2.8 && c < 45.4);
    });

    // Below the middle of the outer two, the curve has a pole between them: for 4, 20 and 37 °C at 4.9 °C.
    [Fact]
    public void Cardinal_temperatures_whose_curve_has_a_pole_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CardinalResponse(C(4), C(20), C(37), "an example"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CardinalResponse(C(4), C(38), C(37), "an example"));
    }

    // Square root of the rate, by hand: 0.03 x (12 - 2) = 0.3.
    [Fact]
    public void The_square_root_rate_is_a_line_squared()
    {
        var response = new SquareRootResponse(0.03, C(2), C(25), "an example");
        Assert.Equal(0.09, response.Rate(C(12)), 1e-12);
        Assert.Equal(0, response.Rate(C(0)));
        Assert.False(response.HoldsAt(C(30)));
    }

    [Fact]
    public void Far_below_its_greatest_temperature_the_full_square_root_is_the_line() => Gen.Double[3, 15].Sample(c =>
    {
        var full = new FullSquareRootResponse(0.03, C(2), 0.5, C(45), "an example").Rate(C(c));
        var line = new SquareRootResponse(0.03, C(2), C(25), "an example").Rate(C(c));
        return Math.Abs((full / line) - 1) < 1e-6;
    });

    // "Doubles per 10 °C" is 7.2 % a degree and 51.2 kJ/mol between 20 and 30 °C, worked out apart.
    [Fact]
    public void A_q10_of_two_is_seven_percent_a_degree()
    {
        var doubling = ExponentialResponse.OfQ10(2, C(20), C(30), "an example");
        var span = TemperatureSpan.Of(doubling, C(20), C(30))!;
        Assert.Equal(7.2, span.PercentPerDegree, 0.05);
        Assert.Equal(51.2, span.ActivationKjPerMol, 0.05);
    }

    [Fact]
    public void Ways_of_saying_it_round_trip() => Gen.Double[-5, 30].Sample(percent =>
    {
        var slope = TemperatureCoefficient.LnTimeSlope(percent);
        return Math.Abs(TemperatureCoefficient.RateChangePctPerDegree(slope) - percent) < 1e-10
            && Math.Abs(TemperatureCoefficient.LnTimeSlopeOfQ10(TemperatureCoefficient.Q10(slope)) - slope) < 1e-12;
    });

    [Fact]
    public void A_conversion_keeps_the_ratio_between_its_two_temperatures() =>
        Gen.Select(Gen.Double[4, 44], Gen.Double[4, 44]).Where((a, b) => Math.Abs(a - b) > 0.1).Sample((a, b) =>
        {
            var span = TemperatureSpan.Of(Growth, C(a), C(b))!;
            var ratio = Growth.Rate(C(b)) / Growth.Rate(C(a));
            return new TemperatureResponse?[]
                {
                    span.AsExponential("an example"), span.AsArrhenius("an example"), span.AsSquareRoot("an example"),
                    span.AsCardinal(Growth.Optimum, Growth.Warmest, "an example"),
                }
                .OfType<TemperatureResponse>()
                .All(other => Math.Abs((other.Rate(C(b)) / other.Rate(C(a)) / ratio) - 1) < 1e-9);
        });

    // The curve for baker's yeast of Salvado et al. 2011: two of its rates and the two upper temperatures give its least.
    [Fact]
    public void A_cardinal_curve_comes_back_from_two_of_its_rates() =>
        Gen.Select(Gen.Double[4, 22], Gen.Double[0.5, 10]).Sample((lower, above) =>
        {
            var span = TemperatureSpan.Of(Growth, C(lower), C(lower + above))!;
            return Math.Abs((span.AsCardinal(Growth.Optimum, Growth.Warmest, "an example")!.Coldest - Growth.Coldest).C) < 1e-4;
        });

    [Fact]
    public void A_square_root_line_comes_back_from_two_of_its_rates() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[6, 15], Gen.Double[0.5, 10]).Sample((start, lower, above) =>
        {
            var line = new SquareRootResponse(0.03, C(start), C(25), "an example");
            var back = TemperatureSpan.Of(line, C(lower + above), C(lower))!.AsSquareRoot("an example")!;
            return Math.Abs((back.Coldest - line.Coldest).C) < 1e-8
                && Math.Abs(back.Rate(C(lower + above)) - 1) < 1e-12
                && Math.Abs((back.Rate(C(lower)) * line.Rate(C(lower + above)) / line.Rate(C(lower))) - 1) < 1e-9;
        });

    // The trade's 10 % a degree from 20 to 24 °C; the root of 1.1^4 is 1.21, so the line starts 4 / 0.21 °C below 20.
    [Fact]
    public void The_trades_rule_as_a_square_root_line_starts_just_above_freezing()
    {
        var span = TemperatureSpan.Of(ExponentialResponse.Trade, C(20), C(24))!;
        Assert.Equal(20 - (4 / 0.21), span.AsSquareRoot("an example")!.Coldest.C, 1e-9);
    }

    [Fact]
    public void What_no_square_root_or_cardinal_curve_can_do_gives_none()
    {
        var falling = TemperatureSpan.Of(Growth, C(36), C(40))!;
        Assert.Null(falling.AsSquareRoot("an example"));
        Assert.Null(TemperatureSpan.Of(ExponentialResponse.Trade, C(20), C(30))!.AsCardinal(C(24), C(28), "an example"));
        Assert.Null(TemperatureSpan.Of(ExponentialResponse.OfQ10(1.01, C(5), C(20), "an example"), C(5), C(20))!
            .AsCardinal(C(32.3), C(45.4), "an example"));
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => falling.AsCardinal(C(45), C(40), "an example"));
        Assert.StartsWith("The best temperature lies below 40.0 °C.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_grows_there_is_no_span()
    {
        Assert.Null(TemperatureSpan.Of(Growth, C(20), C(50)));
        Assert.Throws<ArgumentException>(() => TemperatureSpan.Of(Growth, C(20), C(20)));
    }

    [Fact]
    public void Time_moved_there_and_back_is_the_time() => Gen.Select(Gen.Double[1, 600], Gen.Double[5, 40], Gen.Double[5, 40]).Sample((minutes, a, b) =>
    {
        var there = RiseElsewhere.Of(minutes, C(a), C(b), Growth).Minutes!.Value;
        return Math.Abs(RiseElsewhere.Of(there, C(b), C(a), Growth).Minutes!.Value - minutes) < 1e-8 * minutes;
    });

    [Fact]
    public void A_time_beyond_the_range_of_the_rule_says_so()
    {
        var cold = RiseElsewhere.Of(90, C(25), C(10), ExponentialResponse.Trade);
        Assert.Equal(C(10), Assert.Single(cold.OutsideRange));
        Assert.EndsWith("(beyond 20.0 °C to 32.0 °C, where the rule holds)", cold.Text(UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_rises_there_is_no_time()
    {
        var frozen = RiseElsewhere.Of(90, C(25), C(0), Growth);
        Assert.Null(frozen.Minutes);
        Assert.Equal(
            "90 min at 25.0 °C is not to be had at 0.0 °C (beyond 2.8 °C to 45.4 °C, where the rule holds)", frozen.Text(UnitSystem.Metric));
        Assert.Null(RiseElsewhere.Of(90, C(0), C(25), Growth).Minutes);
    }

    // 0.5 % yeast grows more than 2 % in six hours, so journals give exponents below 1: twice the time then takes less
    // than half the yeast. By hand for 0.8: 1 / 2^(1/0.8) = 0.4204.
    [Fact]
    public void Yeast_for_another_time_follows_the_exponent()
    {
        Assert.Equal(0.5, YeastForTime.Yeast(1, 90, 180), 1e-12);
        Assert.Equal(0.4204, YeastForTime.Yeast(1, 90, 180, 0.8), 5e-5);
    }

    private static Temperature C(double degrees) => Temperature.FromC(degrees);
}
