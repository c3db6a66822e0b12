using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class TemperatureTests
{
    private static readonly Gen<double> AnyC = Gen.Double[-50, 400];

    [Theory]
    [InlineData(32, 0)]
    [InlineData(212, 100)]
    [InlineData(-40, -40)]
    [InlineData(98.6, 37)]
    public void A_temperature_is_converted_with_the_32(double f, double c)
    {
        Assert.Equal(c, Temperature.FromF(f).C, 1e-12);
        Assert.Equal(f, Temperature.FromC(c).F, 1e-12);
    }

    // Facts of conversion: 5 °F are 2.8 °C, 20 are 11.1, 25 are 13.9 (factor 5/9 alone).
    [Theory]
    [InlineData(5, 2.8)]
    [InlineData(20, 11.1)]
    [InlineData(25, 13.9)]
    [InlineData(0, 0)]
    [InlineData(-9, -5)]
    public void A_difference_is_converted_without_the_32(double f, double c)
    {
        Assert.Equal(c, TemperatureDifference.FromF(f).C, 0.05);
        Assert.Equal(f, TemperatureDifference.FromC(TemperatureDifference.FromF(f).C).F, 1e-12);
    }

    [Fact]
    public void Conversions_round_trip() => AnyC.Sample(c =>
        Math.Abs(Temperature.FromF(Temperature.FromC(c).F).C - c) < 1e-10
        && Math.Abs(TemperatureDifference.FromF(TemperatureDifference.FromC(c).F).C - c) < 1e-10);

    [Fact]
    public void The_difference_of_two_temperatures_is_the_same_in_either_unit() => Gen.Select(AnyC, AnyC).Sample((a, b) =>
    {
        var (warm, cold) = (Temperature.FromC(a), Temperature.FromC(b));
        return Math.Abs((warm - cold).F - (warm.F - cold.F)) < 1e-9
            && Math.Abs((cold + (warm - cold)).C - warm.C) < 1e-10
            && Math.Abs((warm - (warm - cold)).C - cold.C) < 1e-10;
    });

    [Fact]
    public void Warmer_and_colder_compare_as_their_degrees_do() => Gen.Select(AnyC, AnyC).Sample((a, b) =>
    {
        var (left, right) = (Temperature.FromC(a), Temperature.FromC(b));
        return left > right == a > b && left < right == a < b && left >= right == a >= b && left <= right == a <= b;
    });

    [Fact]
    public void Text_has_the_decimals_of_a_probe_and_a_point_in_every_unit()
    {
        Assert.Equal("24.5 °C", Temperature.FromC(24.5).Text(UnitSystem.Metric));
        Assert.Equal("76 °F", Temperature.FromC(24.5).Text(UnitSystem.Us));
        Assert.Equal("2.8 °C", TemperatureDifference.FromF(5).Text(UnitSystem.Metric));
        Assert.Equal("5 °F", TemperatureDifference.FromF(5).Text(UnitSystem.Us));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_no_temperature(double degrees)
    {
        Assert.ThrowsAny<ArgumentException>(() => Temperature.FromC(degrees));
        Assert.ThrowsAny<ArgumentException>(() => Temperature.FromF(degrees));
        Assert.ThrowsAny<ArgumentException>(() => TemperatureDifference.FromF(degrees));
    }
}
