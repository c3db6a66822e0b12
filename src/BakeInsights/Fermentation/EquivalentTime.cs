using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>A point of a trace with the time that the dough had lived through by then.</summary>
/// <param name="Minutes">Minutes on the clock, as read.</param>
/// <param name="EquivalentMinutes">Minutes at the reference temperature, from the first reading on.</param>
public readonly record struct EquivalentPoint(double Minutes, double EquivalentMinutes);

/// <summary>
/// The minutes at one temperature that do what a dough's own changing temperature did: the integral of
/// rate(T) / rate(reference) over the trace.
/// </summary>
public sealed record EquivalentTime
{
    /// <summary>
    /// The longest gap between readings, in minutes, that is bridged by a straight line (common practice, no source).
    /// Pan bread in a proof box of 40 to 46 °C warms by 6 to 9 °C in an hour, so a gap hides some 4 °C at most.
    /// </summary>
    public const double LongestGapMin = 30;

    // Three-point Gauss-Legendre on a stretch of straight temperature: positions and weights on 0 to 1.
    private static readonly (double Position, double Weight)[] Nodes =
    [
        (0.5 - (Math.Sqrt(0.6) / 2), 5.0 / 18), (0.5, 8.0 / 18), (0.5 + (Math.Sqrt(0.6) / 2), 5.0 / 18),
    ];

    private EquivalentTime(Temperature reference) => Reference = reference;

    /// <summary>The temperature that the minutes are of.</summary>
    public Temperature Reference { get; }

    /// <summary>Why the trace could not be counted; null when it was.</summary>
    public TraceProblem? Problem { get; private init; }

    /// <summary>
    /// The time lived through at each reading, the first at 0; in order of the clock. Empty with a problem.
    /// </summary>
    public ImmutableArray<EquivalentPoint> Points { get; private init; } = [];

    /// <summary>Equivalent minutes of the whole trace; null with a problem.</summary>
    public double? Minutes => Problem is null ? Points[^1].EquivalentMinutes : null;

    /// <summary>Minutes of the trace on the clock; null with a problem.</summary>
    public double? ClockMinutes => Problem is null ? Points[^1].Minutes - Points[0].Minutes : null;

    /// <summary>How many readings lie where the response does not hold; their stretches are extrapolated.</summary>
    public int ReadingsOutsideRange { get; private init; }

    /// <summary>
    /// Equivalent time along a trace. Readings may be uneven and in any order; several at one minute count as their
    /// mean; between two, the temperature goes straight.
    /// </summary>
    /// <param name="trace">The readings.</param>
    /// <param name="reference">The temperature to count in.</param>
    /// <param name="response">How the rate goes with temperature.</param>
    /// <param name="longestGapMin">A longer gap between readings is refused.</param>
    public static EquivalentTime Along(
        IEnumerable<ProbeReading> trace,
        Temperature reference,
        TemperatureResponse response,
        double longestGapMin = LongestGapMin)
    {
        ArgumentNullException.ThrowIfNull(trace);
        ArgumentNullException.ThrowIfNull(response);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(longestGapMin);
        var unit = response.Rate(reference);
        if (unit <= 0)
        {
            return new(reference) { Problem = TraceProblem.StandsStill(reference, response) };
        }

        var readings = InOrder(trace);
        if (readings.Length < 2)
        {
            return new(reference) { Problem = TraceProblem.TooFewReadings(readings.Length) };
        }

        var points = ImmutableArray.CreateBuilder<EquivalentPoint>(readings.Length);
        points.Add(new(readings[0].Minutes, 0));
        for (var i = 1; i < readings.Length; i++)
        {
            var (before, after) = (readings[i - 1], readings[i]);
            if (after.Minutes - before.Minutes > longestGapMin)
            {
                return new(reference) { Problem = TraceProblem.Gap(before.Minutes, after.Minutes, longestGapMin) };
            }

            points.Add(new(after.Minutes, points[^1].EquivalentMinutes + (Stretch(before, after, response) / unit)));
        }

        return new(reference)
        {
            Points = points.MoveToImmutable(),
            ReadingsOutsideRange = readings.Count(reading => !response.HoldsAt(reading.At)),
        };
    }

    private static ImmutableArray<ProbeReading> InOrder(IEnumerable<ProbeReading> trace) =>
    [
        .. trace.GroupBy(reading => reading.Minutes)
            .OrderBy(group => group.Key)
            .Select(group => new ProbeReading(group.Key, Temperature.FromC(group.Average(reading => reading.At.C)))),
    ];

    private static double Stretch(ProbeReading before, ProbeReading after, TemperatureResponse response)
    {
        var warming = after.At - before.At;
        return (after.Minutes - before.Minutes)
            * Nodes.Sum(node => node.Weight * response.Rate(before.At + (node.Position * warming)));
    }
}
