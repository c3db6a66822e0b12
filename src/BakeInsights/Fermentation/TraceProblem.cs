namespace BakeInsights;

/// <summary>Why a trace of temperatures can't be counted in equivalent minutes, and what would let it.</summary>
/// <param name="Message">What is wrong: one sentence.</param>
/// <param name="Remedy">What would make it possible: one sentence.</param>
public sealed record TraceProblem(string Message, string Remedy)
{
    internal static TraceProblem StandsStill(Temperature reference, TemperatureResponse response) => new(
        $"At {reference} nothing goes on, so no minutes there are equal to any elsewhere.",
        $"Count in minutes at a temperature between {response.Coldest} and {response.Warmest}.");

    internal static TraceProblem TooFewReadings(int count) => new(
        FormattableString.Invariant($"A trace with readings at {count} different minutes covers no time."),
        "Take readings at two different minutes at least.");

    internal static TraceProblem Gap(double from, double to, double longest) => new(
        FormattableString.Invariant($"Between {from} and {to} min nobody read the probe, and what the dough did there is not known."),
        FormattableString.Invariant($"Read at least every {longest} min, or take the parts before and after the gap apart."));
}
