namespace BakeInsights.Reports;

/// <summary>The best and worst bakes of a month.</summary>
internal static class MonthBakeBlocks
{
    private const string NoReason = "no logged cause explains it";

    /// <summary>A table for each result that ranks bakes.</summary>
    public static IEnumerable<ViewBlock> Of(MonthReview review, Figures figures)
    {
        yield return new ViewHeading("Best and worst bakes");
        if (review.ByVolume is null && review.ByCrumb is null)
        {
            yield return new ViewParagraph("No two bakes differ in a logged loaf volume or crumb score, so none can be called best.");
        }

        foreach (var ranking in new[] { review.ByVolume, review.ByCrumb }.OfType<BestAndWorst>())
        {
            yield return Of(ranking, figures);
        }
    }

    private static ViewTable Of(BestAndWorst ranking, Figures figures)
    {
        var caption = ranking.HasReasons
            ? $"By {ranking.Result.Words}. A reason is a setting in the outer quarters of the journal from which the model "
                + "expects, with its whole 95 % interval, a difference to that side of the middle dough."
            : ranking.Result == Measures.CrumbScore ? "By crumb score; what moved the score is asked under its own heading, and no reasons are offered here."
            : $"By {ranking.Result.Words}; the journal bears no model of it, so no reasons are offered.";
        ViewColumn[] columns =
        [
            new("Rank", false), new("Bake", false), new(figures.TitleOf(ranking.Result), true),
            .. ranking.HasReasons ? [new ViewColumn("Likely reason", false)] : Array.Empty<ViewColumn>(),
        ];
        return new ViewTable(
            caption, columns, [.. Rows("best", ranking.Best, ranking, figures), .. Rows("worst", ranking.Worst, ranking, figures)]);
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(
        string side, IReadOnlyList<RankedBake> bakes, BestAndWorst ranking, Figures figures) => bakes.Select((one, place) => (string[])
    [
        $"{side} {Figures.Rounded(place + 1, 0)}",
        one.Bake.Id,
        figures.Bare(ranking.Result.Dimension, one.Value),
        .. ranking.HasReasons ? [Reasons(one, ranking.Result, figures)] : Array.Empty<string>(),
    ]);

    private static string Reasons(RankedBake bake, Measure result, Figures figures) => bake.Reasons.Count == 0
        ? NoReason
        : string.Join("; ", bake.Reasons.Select(reason => Reason(reason, result, figures)));

    private static string Reason(LikelyReason reason, Measure result, Figures figures)
    {
        var unit = figures.UnitOf(result.Dimension);
        string Shown(double canonical) => Figures.Rounded(unit.Difference(canonical), unit.Decimals);
        return $"{reason.Setting.Words} {figures.WithUnit(reason.Setting.Dimension, reason.Value)}, "
            + $"middle {figures.WithUnit(reason.Setting.Dimension, reason.Middle)}: {Shown(reason.Effect.Value)} {unit.Label} expected "
            + $"({Shown(reason.Effect.Low!.Value)} to {Shown(reason.Effect.High!.Value)})";
    }
}
