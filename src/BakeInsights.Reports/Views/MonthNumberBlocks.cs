using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>Temperatures and losses of a month.</summary>
internal static class MonthNumberBlocks
{
    /// <summary>The table, and why a row of it is lacking.</summary>
    public static IEnumerable<ViewBlock> Of(MonthReview review, Figures figures)
    {
        IReadOnlyList<Attempt<IReadOnlyList<IReadOnlyList<string>>>> parts =
        [
            review.DoughTemperature.Select(summary => Rows(summary, figures, isDifference: false)),
            review.Friction.Select(summary => Rows(summary, figures, isDifference: true)),
            review.BakeLoss.Select(summary => Rows(summary, figures, isDifference: false)),
            review.Dividing.Select<IReadOnlyList<IReadOnlyList<string>>>(even => [Row("Dividing, variation of pieces", even, figures)]),
        ];
        yield return new ViewHeading("Dough temperature and losses");
        List<IReadOnlyList<string>> rows = [.. parts.SelectMany(part => part.Match(found => found, _ => []))];
        if (rows.Count > 0)
        {
            yield return new ViewTable(
                "Means, and how far one bake lies from another.",
                [
                    new ViewColumn("What", false),
                    new ViewColumn("Value", true),
                    new ViewColumn("95 % interval", true),
                    new ViewColumn("Bakes", true),
                    new ViewColumn("Left out", false),
                ],
                rows);
        }

        List<string> lacking = [.. parts.Select(part => part.Match(_ => "", problem => $"{problem.Message} {problem.Remedy}")).Where(text => text.Length > 0)];
        if (review.Hits is { } hits)
        {
            yield return new ViewParagraph(Words(hits, figures));
        }

        if (lacking.Count > 0)
        {
            yield return new ViewList(lacking);
        }
    }

    private static IReadOnlyList<IReadOnlyList<string>> Rows(MonthSummary summary, Figures figures, bool isDifference)
    {
        var unit = figures.UnitOf(summary.Measure.Dimension);
        double Shown(double canonical) => isDifference ? unit.Difference(canonical) : unit.Value(canonical);
        string[] Row(string what, Estimate estimate, Func<double, double> shown) =>
        [
            $"{summary.Measure.Title}, {what}",
            $"{Figures.Rounded(shown(estimate.Value), 1)} {unit.Label}",
            Figures.Range(shown(estimate.Low!.Value), shown(estimate.High!.Value), 1),
            Figures.Rounded(summary.Bakes.Count, 0),
            LeftOut(summary.LeftOut),
        ];
        return [Row("mean", summary.Mean, Shown), Row("spread", summary.Spread, unit.Difference)];
    }

    private static IReadOnlyList<string> Row(string what, EvennessOfDividing even, Figures figures) =>
    [
        what,
        figures.WithUnit(Dimension.Percent, even.VariationPct.Value),
        Figures.Range(even.VariationPct.Low, even.VariationPct.High, 1),
        Figures.Rounded(even.ByBake.Count, 0),
        LeftOut(even.LeftOut),
    ];

    private static string LeftOut(IReadOnlyList<LeftOutBakes> groups) => groups.Count == 0
        ? "–"
        : string.Join("; ", groups.Select(group => $"{Figures.Rounded(group.Count, 0)} with {group.Reason}"));

    private static string Words(TargetHits hits, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Temperature);
        return $"Meant to be {figures.WithUnit(Dimension.Temperature, hits.TargetC)}: "
            + $"{Figures.Rounded(hits.Hits.Count, 0)} of {JournalView.Count(hits.Count, "bake")} came within "
            + $"{Figures.Rounded(unit.Difference(TargetHits.ToleranceC), 1)} {unit.Label} of it, "
            + $"{Figures.Rounded(hits.HitPct.Value, 0)} % (95 % interval {Figures.Range(hits.HitPct.Low, hits.HitPct.High, 0)}); "
            + $"{Figures.Rounded(hits.Warmer.Count, 0)} were warmer and {Figures.Rounded(hits.Colder.Count, 0)} colder. "
            + (hits.LeftOut.Count == 0 ? "None was left out." : $"Left out: {LeftOut(hits.LeftOut)}.");
    }
}
