using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class EquivalentTimeTests
{
    private static readonly TemperatureResponse Trade = ExponentialResponse.Trade;

    private static readonly Gen<double[]> AnyMinutes = Gen.Double[0, 240].Array[2, 40];

    [Fact]
    public void At_a_constant_reference_temperature_it_is_the_time_itself() => Gen.Select(AnyMinutes, Gen.Double[5, 40]).Sample((minutes, c) =>
    {
        var readings = minutes.Select(minute => At(minute, c));
        return new[] { Trade, CardinalResponse.YeastGrowth }.All(response =>
            EquivalentTime.Along(readings, C(c), response, 1_000).Minutes is { } lived
                ? Math.Abs(lived - (minutes.Max() - minutes.Min())) < 1e-9
                : minutes.Distinct().Count() < 2);
    });

    [Fact]
    public void At_another_constant_temperature_it_is_the_time_moved() => Gen.Select(Gen.Double[6, 40], Gen.Double[6, 40]).Sample((c, reference) =>
    {
        var lived = EquivalentTime.Along([At(0, c), At(20, c), At(25, c)], C(reference), CardinalResponse.YeastGrowth).Minutes!.Value;
        var moved = RiseElsewhere.Of(25, C(c), C(reference), CardinalResponse.YeastGrowth).Minutes!.Value;
        return Math.Abs(lived - moved) < 1e-9 * moved;
    });

    // Integral of 1.1^(T - 25) while T falls from 26 to 24 °C in 30 min: 15 (1.1 - 1/1.1) / ln 1.1 = 30.0454, by hand.
    [Fact]
    public void A_straight_cooling_is_integrated_to_its_closed_form()
    {
        var closed = 15 * (1.1 - (1 / 1.1)) / Math.Log(1.1);
        Assert.Equal(closed, EquivalentTime.Along([At(0, 26), At(30, 24)], C(25), Trade).Minutes!.Value, 1e-7);
    }

    [Fact]
    public void A_reading_on_the_straight_line_between_two_others_changes_nothing() => Gen.Double[1, 29].Sample(minute =>
    {
        var ends = new[] { At(0, 28), At(30, 22) };
        var with = EquivalentTime.Along([.. ends, At(minute, 28 - (minute / 5))], C(25), Trade);
        var without = EquivalentTime.Along(ends, C(25), Trade);
        return Math.Abs(with.Minutes!.Value - without.Minutes!.Value) < 1e-6 && with.Points.Length == 3;
    });

    [Fact]
    public void Readings_at_one_minute_count_as_their_mean() => Assert.Equal(
        EquivalentTime.Along([At(0, 25), At(20, 25)], C(25), Trade).Minutes!.Value,
        EquivalentTime.Along([At(20, 26), At(0, 25), At(20, 24)], C(25), Trade).Minutes!.Value,
        1e-12);

    [Fact]
    public void A_gap_past_the_limit_is_refused_and_named()
    {
        var holed = EquivalentTime.Along([At(0, 25), At(10, 25), At(41, 24)], C(25), Trade);
        Assert.Contains("Between 10 and 41 min", holed.Problem!.Message, StringComparison.Ordinal);
        Assert.Null(holed.Minutes);
        Assert.Null(holed.ClockMinutes);
        Assert.Empty(holed.Points);
        Assert.Null(EquivalentTime.Along([At(0, 25), At(10, 25), At(41, 24)], C(25), Trade, 31).Problem);
    }

    [Fact]
    public void One_reading_covers_no_time()
    {
        Assert.NotNull(EquivalentTime.Along([At(5, 25), At(5, 24)], C(25), Trade).Problem);
        Assert.NotNull(EquivalentTime.Along([], C(25), Trade).Problem);
    }

    [Fact]
    public void A_reference_at_which_nothing_goes_on_is_a_problem() =>
        Assert.NotNull(EquivalentTime.Along([At(0, 25), At(10, 25)], C(0), CardinalResponse.YeastGrowth).Problem);

    [Fact]
    public void Readings_outside_the_range_are_counted() =>
        Assert.Equal(1, EquivalentTime.Along([At(0, 25), At(10, 18)], C(25), Trade).ReadingsOutsideRange);

    private static ProbeReading At(double minutes, double c) => new(minutes, C(c));

    private static Temperature C(double degrees) => Temperature.FromC(degrees);
}
