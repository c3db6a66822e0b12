namespace BakeInsights.Reports;

/// <summary>How well a month was logged.</summary>
internal static class MonthQualityBlocks
{
    /// <summary>The counts, and a table of the columns that bakes lack.</summary>
    public static IEnumerable<ViewBlock> Of(MonthQuality quality)
    {
        yield return new ViewHeading("How well it was logged");
        var spans = quality.Rises == 0
            ? "No bake has a rise time."
            : $"{Number(quality.Spans)} of {JournalView.Count(quality.Rises, "rise time")} "
                + $"({Figures.Rounded(100.0 * quality.Spans / quality.Rises, 0)} %) {(quality.Spans == 1 ? "lies" : "lie")} between two looks, "
                + $"{Number(quality.WideSpans)} of them far apart.";
        var habit = quality.BestHabit is { } best
            ? $"The habit that would help most: {best.Words} It concerns {Number(best.Bakes)} of the {Number(quality.Bakes)}."
            : "Nothing is lacking.";
        yield return new ViewParagraph(
            $"In the whole journal {JournalView.Count(quality.SetAside, "row")} {(quality.SetAside == 1 ? "was" : "were")} set aside; "
            + $"{JournalView.Count(quality.Doubted.Count, "cell")} of the month {(quality.Doubted.Count == 1 ? "is" : "are")} doubted. {spans} "
            + $"{JournalView.Count(quality.ByCup, "bake")} had {(quality.ByCup == 1 ? "its" : "their")} flour by the cup. {habit}");
        if (quality.Missing.Count > 0)
        {
            yield return new ViewTable(
                "Cells that the month's questions need and bakes lack.",
                [new ViewColumn("Column", false), new ViewColumn("Bakes without", true), new ViewColumn("Needed for", false)],
                [.. quality.Missing.Select(missing => new[] { missing.Column, Number(missing.Count), missing.Serves })]);
        }
    }

    private static string Number(int count) => Figures.Rounded(count, 0);
}
