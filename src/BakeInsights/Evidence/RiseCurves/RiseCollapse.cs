namespace BakeInsights;

/// <summary>
/// The rule by which a collapse is told: after its highest reading the dough lies lower, by more than a tenth of the
/// rise it had there, at the last reading still. A dough that never rose far enough for a curve has not collapsed. Then what follows the highest reading is cut off, as rise curves
/// end at a ceiling and know no fall.
/// </summary>
internal static class RiseCollapse
{
    /// <summary>
    /// The share of the highest rise. Common practice, no source: readings of a jar err by some 2 % of the rise, so a
    /// tenth is out of their reach.
    /// </summary>
    public const double Share = 0.1;

    /// <summary>How many readings from the first on are kept: all of them, or those up to the highest.</summary>
    /// <param name="sizes">The sizes in the order of time.</param>
    public static int Kept(IReadOnlyList<double> sizes)
    {
        if (sizes.Count == 0)
        {
            return 0;
        }

        var highest = Enumerable.Range(0, sizes.Count).MaxBy(i => sizes[i]);
        var line = sizes[highest] - (Share * (sizes[highest] - sizes[0]));
        var hasRisen = sizes[highest] >= (1 + RiseCurveProblems.LeastRise) * sizes[0];
        return hasRisen && sizes[^1] < line ? highest + 1 : sizes.Count;
    }
}
