namespace BakeInsights.Tests;

/// <summary>A calculation that somebody else has printed, beside ours.</summary>
/// <param name="Number">The example's number; parts of one example share it.</param>
/// <param name="What">What is calculated from what.</param>
/// <param name="Unit">The unit of both values.</param>
/// <param name="Ours">Our value.</param>
/// <param name="Theirs">The source's value, as printed there.</param>
/// <param name="Tolerance">How far apart they may be: the source's rounding.</param>
/// <param name="Source">Where it is printed; "worked out apart" for a calculation made outside this code.</param>
public sealed record WorkedExample(
    int Number, string What, string Unit, double Ours, double Theirs, double Tolerance, string Source)
{
    public const string Apart = "worked out apart from this code";

    public override string ToString() => $"{Number}: {What}";

    /// <summary>The same temperature in both units.</summary>
    public static IEnumerable<WorkedExample> InBothUnits(
        int number, string what, Temperature ours, double theirsF, double toleranceF, string source) =>
    [
        new(number, what, "°F", ours.F, theirsF, toleranceF, source),
        new(number, what, "°C", ours.C, (theirsF - 32) * 5 / 9, toleranceF * 5 / 9, source + ", converted"),
    ];
}
