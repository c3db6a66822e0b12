using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class TemperatureCoefficientTests
{
    // Common practice, no source: the rate changes by 10 % a °C. The minutes are worked out from it by hand, 90 x 1.1^n.
    [Theory]
    [InlineData(22, 119.8)]
    [InlineData(20, 144.9)]
    [InlineData(25, 90.0)]
    [InlineData(28, 67.6)]
    public void Ninety_minutes_at_25_degrees_become_longer_when_colder(double celsius, double minutes)
    {
        var slope = TemperatureCoefficient.LnTimeSlope(10);

        Assert.Equal(minutes, 90 * TemperatureCoefficient.TimeFactor(slope, celsius - 25), 0.05);
    }

    // 1.1^10 = 2.5937 (as above).
    [Fact]
    public void Ten_percent_a_degree_is_a_q10_of_2_5937() =>
        Assert.Equal(2.5937, TemperatureCoefficient.Q10(TemperatureCoefficient.LnTimeSlope(10)), 5e-5);

    // 1.1^-4 = 0.68 (as above): four degrees warmer take about two thirds of the time.
    [Fact]
    public void Four_degrees_warmer_take_0_68_of_the_time() =>
        Assert.Equal(0.68, TemperatureCoefficient.TimeFactor(TemperatureCoefficient.LnTimeSlope(10), 4), 0.005);

    [Fact]
    public void Ten_degrees_warmer_take_one_part_in_q10_of_the_time() => Gen.Double[-0.3, 0.1].Sample(slope =>
        Math.Abs((TemperatureCoefficient.TimeFactor(slope, 10) * TemperatureCoefficient.Q10(slope)) - 1) < 1e-12);

    [Fact]
    public void Warmer_and_then_as_much_colder_is_no_change() => Gen.Select(Gen.Double[-0.3, 0.1], Gen.Double[-20, 20])
        .Sample((slope, warmer) => Math.Abs(
            (TemperatureCoefficient.TimeFactor(slope, warmer) * TemperatureCoefficient.TimeFactor(slope, -warmer)) - 1) < 1e-12);
}
