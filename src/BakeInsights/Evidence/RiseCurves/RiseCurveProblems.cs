using static System.FormattableString;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Why readings bear no rise curve, and how many more would.</summary>
internal static class RiseCurveProblems
{
    /// <summary>
    /// The fewest minutes with a reading: four numbers of the curve and the scatter, and one more than these for the
    /// criterion that chooses the curve to be defined (Hurvich and Tsai 1989, Biometrika 76:297-307).
    /// </summary>
    public const int FewestReadings = 7;

    /// <summary>
    /// The least rise of the highest reading over the first, as a share. Common practice, no source: less is lost among
    /// the errors of reading.
    /// </summary>
    public const double LeastRise = 0.2;

    /// <summary>The fewest readings past the steepest rise. Common practice, no source: one alone may be an error.</summary>
    public const int PastSteepest = 2;

    /// <summary>What is wrong with the readings themselves; null if nothing is.</summary>
    public static FitProblem? Find(RiseSeries series)
    {
        var minutes = series.Minutes.Distinct().Count();
        if (minutes < FewestReadings)
        {
            var upTo = series.CollapsedCount > 0 ? " up to the highest, before the dough collapsed" : "";
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [Column(series)],
                Invariant($"There {(minutes == 1 ? "is" : "are")} {Count(minutes, "reading")} of size{upTo}, and a curve needs {FewestReadings}."),
                series.CollapsedCount > 0
                    ? Invariant($"Read more often: take at least {FewestReadings - minutes} more while the dough rises.")
                    : Invariant($"Take at least {FewestReadings - minutes} more, at other minutes, until the rise has slowed."));
        }

        var risen = (series.Sizes.Max() / series.Sizes[0]) - 1;
        return risen >= LeastRise ? null : new FitProblem(
            FitProblemKind.NoSpread,
            [Column(series)],
            Invariant($"The dough has risen by {100 * risen:F0} % over its first reading, and a curve needs {100 * LeastRise:F0} %."),
            Invariant($"Go on until it has risen that far and slowed: take at least {PastSteepest + 1} more readings."));
    }

    /// <summary>What is wrong with where the readings lie on the fitted curve; null if nothing is.</summary>
    public static FitProblem? Find(RiseSeries series, RiseCurve curve)
    {
        var steepest = curve.SteepestAtMin;
        if (steepest < series.Minutes[0])
        {
            return new FitProblem(
                FitProblemKind.NoConvergence,
                [RiseColumns.Minutes.Stem, Column(series)],
                "The readings begin after the rise was steepest, so they say nothing of its start.",
                "Next time read from the start of the stage on: at least 2 readings before the dough moves.");
        }

        var past = series.Minutes.Where(minute => minute > steepest).Distinct().Count();
        return past >= PastSteepest ? null : new FitProblem(
            FitProblemKind.NoConvergence,
            [RiseColumns.Minutes.Stem, Column(series)],
            Invariant($"{(past == 0 ? "No reading lies" : "Only 1 reading lies")} past the steepest rise, and a ceiling needs {PastSteepest}."),
            Invariant($"Take at least {Count(PastSteepest - past, "more reading")} after the rise has begun to slow."));
    }

    /// <summary>The search came to no end.</summary>
    public static FitProblem NoEnd(RiseSeries series) => new(
        FitProblemKind.NoConvergence,
        [Column(series), RiseColumns.Minutes.Stem],
        "The readings don't settle a curve: they don't show lag, steepest rise and ceiling all three.",
        Invariant($"Take at least {PastSteepest} more readings after the rise has begun to slow, and 2 before it begins."));

    /// <summary>The readings lie on the curve.</summary>
    public static FitProblem NoScatter(RiseSeries series) => new(
        FitProblemKind.ZeroSpread,
        [Column(series)],
        "The readings lie on the curve to the last digit, so no scatter is left to measure uncertainty with.",
        "Give at least 1 more reading, as it was read.");

    private static string Column(RiseSeries series) => (series.IsHeight ? RiseColumns.Height : RiseColumns.Volume).Name;

    private static string Count(int count, string what) => Invariant($"{count} {what}{(count == 1 ? "" : "s")}");
}
