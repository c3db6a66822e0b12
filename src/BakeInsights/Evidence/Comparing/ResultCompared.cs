namespace BakeInsights;

/// <summary>One result of two ways, side by side.</summary>
/// <param name="Result">The result.</param>
/// <param name="Name">What it is called in sentences.</param>
/// <param name="FirstCount">Bakes of the first way behind it.</param>
/// <param name="SecondCount">Bakes of the second way behind it.</param>
/// <param name="FirstMean">The first way's mean, blocks and other causes as in the average bake used, in the canonical unit.</param>
/// <param name="SecondMean">The second way's mean.</param>
/// <param name="Difference">The second less the first, in the canonical unit, with its 95 % interval.</param>
/// <param name="PercentInterval90">
/// The 90 % interval of the difference in percent of the first way's mean. It lies inside the margin just where both
/// one-sided tests of 5 % say so (Schuirmann 1987, Journal of Pharmacokinetics and Biopharmaceutics 15, 657-680). For a
/// time it is exact; for other results the first way's mean is taken as known.
/// </param>
/// <param name="Likeness">What follows.</param>
/// <param name="Blocks">The columns within which bakes were compared.</param>
/// <param name="HeldStill">The terms of causes that were held still.</param>
/// <param name="NotHeldStill">Those that couldn't be, with the reason.</param>
/// <param name="Finding">The comparison as one question of the family of all results.</param>
public sealed record ResultCompared(
    Measure Result,
    string Name,
    int FirstCount,
    int SecondCount,
    Estimate FirstMean,
    Estimate SecondMean,
    Estimate Difference,
    Estimate PercentInterval90,
    Likeness Likeness,
    IReadOnlyList<string> Blocks,
    IReadOnlyList<string> HeldStill,
    IReadOnlyList<LeftOutTerm> NotHeldStill,
    Finding Finding);

/// <summary>A result that the two ways can't be compared in.</summary>
/// <param name="Result">The result.</param>
/// <param name="Reason">Why not, and what would help.</param>
public sealed record ResultNotCompared(Measure Result, string Reason);

/// <summary>How two ways were set, by the bakes that say so.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="First">The first way's values.</param>
/// <param name="Second">The second way's values.</param>
/// <param name="AreApart">Whether every value of one way lies above every value of the other.</param>
public sealed record SettingBeside(Measure Setting, MeasureSummary First, MeasureSummary Second, bool AreApart);
