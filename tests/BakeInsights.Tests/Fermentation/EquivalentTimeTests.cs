using BakeInsights.Inference;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests.Fermentation;

public class EquivalentTimeTests
{
    private static readonly TemperatureResponse Trade = ExponentialResponse.Trade;

    private static readonly Gen<double[]> AnyMinutes = Gen.Double[0, 240].Array[2, 40];

    [Fact]
    public void At_a_constant_reference_temperature_it_is_the_time_itself() => Gen.Select(AnyMinutes, Gen.Double[5, 40]).Sample((minutes, c) =>
    {
        var readings = minutes.Select(minute => At(minute, c));
        return new[] { Trade, CardinalResponse.YeastGrowth }.All(response =>
            EquivalentTime.Along(readings, C(c), response, 1_000).Match(
                lived => Math.Abs(lived.Minutes - (minutes.Max() - minutes.Min())) < 1e-9,
                problem => minutes.Distinct().Count() < 2));
    });

    [Fact]
    public void At_another_constant_temperature_it_is_the_time_moved() => Gen.Select(Gen.Double[6, 40], Gen.Double[6, 40]).Sample((c, reference) =>
    {
        var lived = EquivalentTime.Along([At(0, c), At(20, c), At(25, c)], C(reference), CardinalResponse.YeastGrowth).Value;
        var moved = RiseElsewhere.Of(25, C(c), C(reference), CardinalResponse.YeastGrowth).Value.Minutes;
        return Math.Abs(lived.Minutes - moved) < 1e-9 * moved;
    });

    // Integral of 1.1^(T - 25) while T falls from 26 to 24 °C in 30 min: 15 (1.1 - 1/1.1) / ln 1.1 = 30.0454, by hand.
    [Fact]
    public void A_straight_cooling_is_integrated_to_its_closed_form()
    {
        var closed = 15 * (1.1 - (1 / 1.1)) / Math.Log(1.1);
        Assert.Equal(closed, EquivalentTime.Along([At(0, 26), At(30, 24)], C(25), Trade).Value.Minutes, 1e-7);
    }

    [Fact]
    public void A_reading_on_the_straight_line_between_two_others_changes_nothing() => Gen.Double[1, 29].Sample(minute =>
    {
        var ends = new[] { At(0, 28), At(30, 22) };
        var with = EquivalentTime.Along([.. ends, At(minute, 28 - (minute / 5))], C(25), Trade).Value;
        var without = EquivalentTime.Along(ends, C(25), Trade).Value;
        return Math.Abs(with.Minutes - without.Minutes) < 1e-6 && with.Points.Length == 3;
    });

    [Fact]
    public void Readings_at_one_minute_count_as_their_mean() => Assert.Equal(
        EquivalentTime.Along([At(0, 25), At(20, 25)], C(25), Trade).Value.Minutes,
        EquivalentTime.Along([At(20, 26), At(0, 25), At(20, 24)], C(25), Trade).Value.Minutes,
        1e-12);

    [Fact]
    public void A_gap_past_the_limit_is_refused_and_named()
    {
        var holed = EquivalentTime.Along([At(0, 25), At(10, 25), At(41, 24)], C(25), Trade);
        Assert.False(holed.TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.MissingValue, problem.Kind);
        Assert.Contains("Between 10 and 41 min", problem.Message, StringComparison.Ordinal);
        Assert.True(EquivalentTime.Along([At(0, 25), At(10, 25), At(41, 24)], C(25), Trade, 31).Succeeded);
    }

    [Fact]
    public void One_reading_covers_no_time()
    {
        Assert.False(EquivalentTime.Along([At(5, 25), At(5, 24)], C(25), Trade).TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.TooFewRows, problem.Kind);
        Assert.False(EquivalentTime.Along([], C(25), Trade).Succeeded);
    }

    [Fact]
    public void A_reference_at_which_nothing_goes_on_is_a_problem() =>
        Assert.False(EquivalentTime.Along([At(0, 25), At(10, 25)], C(0), CardinalResponse.YeastGrowth).Succeeded);

    [Fact]
    public void Readings_outside_the_range_are_counted() =>
        Assert.Equal(1, EquivalentTime.Along([At(0, 25), At(10, 18)], C(25), Trade).Value.ReadingsOutsideRange);

    private static ProbeReading At(double minutes, double c) => new(minutes, C(c));

    private static Temperature C(double degrees) => Temperature.FromC(degrees);
}
