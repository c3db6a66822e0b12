using System.Collections.Immutable;
using System.Globalization;

namespace BakeInsights;

/// <summary>A known rise time, moved to a dough of another temperature.</summary>
/// <param name="KnownMinutes">The rise that is known.</param>
/// <param name="KnownAt">The dough's temperature there.</param>
/// <param name="At">The dough's temperature in the other kitchen.</param>
/// <param name="Minutes">The rise to expect there; null where the dough would stand still.</param>
/// <param name="Response">The response that moved it.</param>
public sealed record RiseElsewhere(
    double KnownMinutes, Temperature KnownAt, Temperature At, double? Minutes, TemperatureResponse Response)
{
    /// <summary>The time a dough needs in another kitchen, all else alike.</summary>
    /// <param name="minutes">The rise that is known, not negative.</param>
    /// <param name="knownAt">The dough's temperature there; the dough's, not the room's, for a dough lags its room.</param>
    /// <param name="at">The dough's temperature in the other kitchen.</param>
    /// <param name="response">How the rate goes with temperature.</param>
    public static RiseElsewhere Of(
        double minutes, Temperature knownAt, Temperature at, TemperatureResponse response)
    {
        ArgumentNullException.ThrowIfNull(response);
        ArgumentOutOfRangeException.ThrowIfNegative(minutes);
        var (known, there) = (response.Rate(knownAt), response.Rate(at));
        return new(minutes, knownAt, at, known > 0 && there > 0 ? minutes * known / there : null, response);
    }

    /// <summary>The temperatures of the two at which the response does not hold, so that it is an extrapolation.</summary>
    public ImmutableArray<Temperature> OutsideRange =>
        [.. new[] { KnownAt, At }.Where(temperature => !Response.HoldsAt(temperature))];

    /// <summary>In words: "90 min at 25.0 °C is 145 min at 20.0 °C".</summary>
    public string Text(UnitSystem system)
    {
        var there = Minutes is { } minutes ? string.Create(CultureInfo.InvariantCulture, $"{minutes:F0} min") : "not to be had";
        var sentence = string.Create(
            CultureInfo.InvariantCulture, $"{KnownMinutes:F0} min at {KnownAt.Text(system)} is {there} at {At.Text(system)}");
        var range = $"{Response.Coldest.Text(system)} to {Response.Warmest.Text(system)}";
        return OutsideRange.IsEmpty ? sentence : $"{sentence} (beyond {range}, where the rule holds)";
    }
}
