using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The wordings of what can stand in the way of an answer about fermentation.</summary>
internal static class FermentationProblems
{
    public const string MinutesColumn = "minutes";
    public const string TemperatureColumn = "temp_c";

    public static FitProblem StandsStill(Temperature at, TemperatureResponse response) => new(
        FitProblemKind.OutOfRange,
        [TemperatureColumn],
        $"At {at} nothing goes on: {response.Purpose}.",
        $"Ask between {response.Coldest} and {response.Warmest}.");

    public static FitProblem TooFewReadings(int count) => new(
        FitProblemKind.TooFewRows,
        [MinutesColumn],
        FormattableString.Invariant($"A trace of {count} readings covers no time."),
        "Take at least two readings at different minutes.");

    public static FitProblem Gap(double from, double to, double longest) => new(
        FitProblemKind.MissingValue,
        [MinutesColumn],
        FormattableString.Invariant($"Between {from} and {to} min nobody read the probe, and what the dough did there is not known."),
        FormattableString.Invariant($"Read at least every {longest} min, or take the parts before and after the gap apart."));
}
