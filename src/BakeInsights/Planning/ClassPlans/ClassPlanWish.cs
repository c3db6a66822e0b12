using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a class wants to find out, and with what.</summary>
/// <param name="Factors">What is varied, each with its levels as the class names them; one or more, no name twice.</param>
/// <param name="Benches">The benches, each a group that bakes side by side; one or more, no name twice.</param>
/// <param name="Result">What is looked at: the rise time or the specific volume.</param>
/// <param name="Difference">
/// The difference between two levels that is worth finding: in percent of a rise time, in mL/g of a specific volume; above 0.
/// </param>
public sealed record ClassPlanWish(IReadOnlyList<FactorLevels> Factors, IReadOnlyList<string> Benches, Measure Result, double Difference)
{
    /// <summary>The chance of finding a difference that is there: the convention of Cohen (1988), section 2.4.</summary>
    public const double UsualPower = 0.8;

    /// <summary>Loaves that come to grief in a class, of 100: common practice, no source.</summary>
    public const double UsualSparePct = 10;

    /// <summary>Bakes that a bench gets through in a course: our own choice.</summary>
    public const int UsualMostPerBench = 16;

    /// <summary>The chance that it is to be found with, between 0.05 and 1.</summary>
    public double Power { get; init; } = UsualPower;

    /// <summary>Whether half of the combinations will do: three factors or more of two levels each.</summary>
    public bool IsHalf { get; init; }

    /// <summary>
    /// The factor that one oven or one proof box sets for all benches at once, so that it stays for a whole round; null if
    /// every bench sets all of them.
    /// </summary>
    public string? SetForAll { get; init; }

    /// <summary>Spare bakes for lost ones, in percent of the planned, from 0 to 100.</summary>
    public double SparePct { get; init; } = UsualSparePct;

    /// <summary>The most bakes that one bench can make, spare ones not counted.</summary>
    public int MostPerBench { get; init; } = UsualMostPerBench;

    /// <summary>
    /// How much single bakes scatter, one standard deviation in the unit of <see cref="Difference"/>; null to take it from the
    /// journal.
    /// </summary>
    public double? Scatter { get; init; }
}
