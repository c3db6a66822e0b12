using System.Text.Json.Nodes;

namespace BakeInsights.Reports;

/// <summary>The data of a figure as tables: lines and bands over the same places side by side, marks in tables of their own.</summary>
internal static class ChartTables
{
    /// <summary>The tables; empty for a figure without values across and up.</summary>
    public static IReadOnlyList<ViewTable> Of(JsonObject figure)
    {
        var series = ChartSeries.Of(figure);
        var drawn = series.Where(one => one.Kind != SeriesKind.Marks)
            .GroupBy(one => string.Join('\n', one.X.Select(ChartWords.Value).Prepend(one.XTitle)));
        return [.. drawn.Select(group => Lines([.. group])), .. series.Where(one => one.Kind == SeriesKind.Marks).Select(Marks)];
    }

    private static ViewTable Lines(IReadOnlyList<ChartSeries> series) => new(
        $"{string.Join("; ", series.Select(one => one.Name).Where(name => name.Length > 0).DefaultIfEmpty("Line"))}: {series[0].YTitle}",
        [new ViewColumn(series[0].XTitle, IsNumber(series[0])), .. series.SelectMany(ColumnsOf)],
        [.. series[0].X.Index().Select(place => (IReadOnlyList<string>)[ChartWords.Value(place.Item), .. series.SelectMany(one => CellsOf(one, place.Index))])]);

    private static IEnumerable<ViewColumn> ColumnsOf(ChartSeries one)
    {
        var name = one.Name.Length > 0 ? one.Name : one.YTitle;
        return one.Kind == SeriesKind.Band
            ? [new ViewColumn($"{name}: from", true), new ViewColumn($"{name}: to", true)]
            : [new ViewColumn(name, true)];
    }

    private static IEnumerable<string> CellsOf(ChartSeries one, int place) => one.Kind == SeriesKind.Band
        ? [Cell(one.Low[place]), Cell(one.High[place])]
        : [Cell(one.Low[place])];

    private static ViewTable Marks(ChartSeries one) => new(
        one.Name.Length > 0 ? one.Name : "Marks",
        [
            .. one.Marks.Count > 0 ? [new ViewColumn("Mark", false)] : Array.Empty<ViewColumn>(),
            new ViewColumn(one.XTitle, IsNumber(one)),
            new ViewColumn(one.YTitle, true),
            .. one.Ends.Count > 0 ? [new ViewColumn("From", true), new ViewColumn("To", true)] : Array.Empty<ViewColumn>(),
        ],
        [
            .. one.X.Index().Select(place => (IReadOnlyList<string>)
            [
                .. one.Marks.Count > 0 ? [one.Marks[place.Index]] : Array.Empty<string>(),
                ChartWords.Value(place.Item),
                Cell(one.Low[place.Index]),
                .. one.Ends.Count > 0
                    ? [Cell(one.Ends[place.Index].Low), Cell(one.Ends[place.Index].High)]
                    : Array.Empty<string>(),
            ]),
        ]);

    private static bool IsNumber(ChartSeries one) => one.X[0] is double;

    private static string Cell(double? value) => value is { } number ? ChartWords.Value(number) : "–";
}
