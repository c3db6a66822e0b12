using static System.FormattableString;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How a dough rose: the curve that suits its readings better, the other beside it.</summary>
/// <param name="Series">The readings used.</param>
/// <param name="Chosen">The fit with the lesser <see cref="RiseCurveFit.Aicc"/>.</param>
/// <param name="Other">The other curve's fit, or why there is none.</param>
public sealed record RiseCurveAnswer(RiseSeries Series, RiseCurveFit Chosen, Attempt<RiseCurveFit> Other)
{
    /// <summary>
    /// Below this the readings hardly tell the curves apart: Burnham and Anderson 2002, Model Selection and Multimodel
    /// Inference, 2nd ed., p. 70 (from memory).
    /// </summary>
    public const double HardlyTold = 2;

    /// <summary>
    /// The share of the starting size by which a dough may have risen at its first reading without a remark. Common
    /// practice, no source.
    /// </summary>
    public const double LateStart = 0.1;

    /// <summary>How much larger the other curve's criterion is, 0 or more; null where the other could not be fitted.</summary>
    public double? AiccDifference => Other.TryGet(out var other, out _) ? other.Aicc - Chosen.Aicc : null;

    /// <summary>The readings as multiples of the chosen fit's starting size.</summary>
    public IReadOnlyList<double> Expansions => [.. Series.Sizes.Select(size => size / Chosen.StartSize)];

    /// <summary>The readings cut off after a collapse, as multiples of the same.</summary>
    public IReadOnlyList<double> CutExpansions => [.. Series.CutSizes.Select(size => size / Chosen.StartSize)];

    /// <summary>What a reader has to bear in mind, one sentence or two each.</summary>
    public IReadOnlyList<string> Caveats => [.. Remarks()];

    private IEnumerable<string> Remarks()
    {
        if (Series.CollapsedCount > 0)
        {
            var cut = Series.CollapsedCount == 1 ? "1 reading after it was" : Invariant($"{Series.CollapsedCount} readings after it were");
            yield return Invariant(
                $"The dough collapsed after its highest reading: {cut} cut off, and the dough stayed lower by more than {100 * RiseCollapse.Share:F0} % of its rise.");
        }

        if (Series.UnsizedCount > 0)
        {
            yield return Invariant($"{Count(Series.UnsizedCount)} without a {(Series.IsHeight ? "height" : "volume")} {(Series.UnsizedCount == 1 ? "was" : "were")} left out.");
        }

        if (Chosen.Doubling is { } doubling && doubling.Value > Series.Minutes[^1])
        {
            yield return Invariant($"The last reading was at {Series.Minutes[^1]:F0} min: the time to double is extrapolated.");
        }

        if (Chosen.Curve.Rise(Series.Minutes[0]) is var before and > LateStart)
        {
            yield return Invariant($"On the curve the dough had risen by {100 * before:F0} % at its first reading: the starting size is extrapolated.");
        }

        if (AiccDifference < HardlyTold)
        {
            yield return Invariant($"The readings hardly tell the two curves apart: the criteria (AICc) differ by {AiccDifference:F1}. Intervals hold if the chosen curve is the right one.");
        }

        if (!Other.TryGet(out _, out var problem))
        {
            yield return $"The other curve could not be fitted. {problem.Message}";
        }

        if (Series.IsHeight)
        {
            yield return "Heights count as volumes in a straight-sided vessel only.";
        }
    }

    private static string Count(int count) => Invariant($"{count} reading{(count == 1 ? "" : "s")}");
}
