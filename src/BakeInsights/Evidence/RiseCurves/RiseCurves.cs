using System.Collections.Immutable;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Rise curves fitted to readings of rising doughs.</summary>
/// <remarks>
/// The curves are the modified Gompertz and logistic of Zwietering et al. 1990, Appl. Environ. Microbiol. 56:1875-1881,
/// as size = start x (1 + rise), by nonlinear least squares. Readings are taken to scatter about the curve
/// independently, with one spread. The curve with the lesser AICc is chosen (Hurvich and Tsai 1989, Biometrika
/// 76:297-307). Intervals are profile intervals: Bates and Watts 1988, Nonlinear Regression Analysis and Its
/// Applications, section 6.1.
/// </remarks>
public static class RiseCurves
{
    /// <summary>An attempt for each bake and stage that has readings, in the order of the journal.</summary>
    public static ImmutableArray<RiseCurveAttempt> Of(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return
        [
            .. journal.RiseReadings
                .GroupBy(reading => (reading.BakeId, reading.Stage))
                .Select(group => new RiseCurveAttempt(group.Key.BakeId, group.Key.Stage, Fit(RiseSeries.Of([.. group])))),
        ];
    }

    /// <summary>
    /// Fits both curves. A problem says how many more readings to take: they are too few, too flat, or not yet past the
    /// steepest rise.
    /// </summary>
    public static Attempt<RiseCurveAnswer> Fit(RiseSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        if (RiseCurveProblems.Find(series) is { } problem)
        {
            return problem;
        }

        var (gompertz, logistic) = (RiseCurveFitting.Fit(RiseFamily.Gompertz, series), RiseCurveFitting.Fit(RiseFamily.Logistic, series));
        var (chosen, other) = AiccOf(logistic) < AiccOf(gompertz) ? (logistic, gompertz) : (gompertz, logistic);
        return chosen.Match<Attempt<RiseCurveAnswer>>(
            fit => RiseCurveProblems.Find(series, fit.Curve) is { } misplaced
                ? misplaced
                : new RiseCurveAnswer(series, fit, other),
            none => none);
    }

    // A fit that isn't there is never chosen over one that is.
    private static double AiccOf(Attempt<RiseCurveFit> fit) => fit.Match(found => found.Aicc, _ => double.PositiveInfinity);
}
