namespace BakeInsights;

/// <summary>The month's best and worst bakes by one result.</summary>
/// <param name="Result">The result; more of it is better.</param>
/// <param name="Best">The best, the best first.</param>
/// <param name="Worst">The worst, the worst first.</param>
/// <param name="HasReasons">Whether a model of the result stands behind the reasons.</param>
public sealed record BestAndWorst(
    Measure Result, IReadOnlyList<RankedBake> Best, IReadOnlyList<RankedBake> Worst, bool HasReasons)
{
    /// <summary>How many of each.</summary>
    public const int Most = 3;

    /// <summary>By specific volume, with what the model of loaf volume expects of far-off settings.</summary>
    /// <param name="month">The month's bakes.</param>
    /// <param name="journal">All bakes, for the model and the middle.</param>
    /// <returns>Null when fewer than two bakes have the result.</returns>
    public static BestAndWorst? ByVolume(IReadOnlyList<Bake> month, IReadOnlyList<Bake> journal)
    {
        ArgumentNullException.ThrowIfNull(month);
        ArgumentNullException.ThrowIfNull(journal);
        var reasons = LoafVolume.Ask(journal).Match<VolumeReasons?>(
            answer => answer.IsFromSums ? null : new VolumeReasons(answer, journal), _ => null);
        return Of(Measures.SpecificVolume, month, reasons);
    }

    /// <summary>By crumb score; bakes of one score in order of their specific volume. There is no model of it.</summary>
    /// <returns>Null when fewer than two bakes have a score, or all have the same.</returns>
    public static BestAndWorst? ByCrumb(IReadOnlyList<Bake> month)
    {
        ArgumentNullException.ThrowIfNull(month);
        return Of(Measures.CrumbScore, month, null);
    }

    private static BestAndWorst? Of(Measure result, IReadOnlyList<Bake> month, VolumeReasons? reasons)
    {
        List<Bake> ordered =
        [
            .. month.Where(bake => result.Of(bake) is not null)
                .OrderByDescending(bake => result.Of(bake))
                .ThenByDescending(bake => Measures.SpecificVolume.Of(bake) ?? 0),
        ];
        if (ordered.Count < 2 || result.Of(ordered[0]) == result.Of(ordered[^1]))
        {
            return null;
        }

        // No bake may be among both, and the middle one of few is neither.
        var many = Math.Min(Most, ordered.Count / 2);
        RankedBake Ranked(Bake bake, int side) => new(bake, result.Of(bake)!.Value, reasons?.Of(bake, side) ?? []);
        return new BestAndWorst(
            result,
            [.. ordered.Take(many).Select(bake => Ranked(bake, 1))],
            [.. ordered.AsEnumerable().Reverse().Take(many).Select(bake => Ranked(bake, -1))],
            reasons is not null);
    }
}
