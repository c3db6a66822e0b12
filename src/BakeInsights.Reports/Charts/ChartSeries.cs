using System.Globalization;
using System.Text.Json.Nodes;

namespace BakeInsights.Reports;

/// <summary>One series of a figure as a reader of tables wants it: values by place, not strokes.</summary>
/// <param name="Name">What the legend calls it; empty where it is not in the legend.</param>
/// <param name="Kind">Marks, line or band.</param>
/// <param name="XTitle">What the values across are.</param>
/// <param name="YTitle">What the values up are.</param>
/// <param name="X">The places across, a number or a text each.</param>
/// <param name="Low">The values up, or a band's lower edge; null where a place has none.</param>
/// <param name="High">A band's upper edge, the same as <paramref name="Low"/> for the others.</param>
/// <param name="Marks">What each mark is called; empty where marks have no words.</param>
/// <param name="Ends">The ends of each mark's interval; empty without intervals.</param>
internal sealed record ChartSeries(
    string Name,
    SeriesKind Kind,
    string XTitle,
    string YTitle,
    IReadOnlyList<object> X,
    IReadOnlyList<double?> Low,
    IReadOnlyList<double?> High,
    IReadOnlyList<string> Marks,
    IReadOnlyList<(double Low, double High)> Ends)
{
    /// <summary>The series of a figure that have values across and up.</summary>
    public static IReadOnlyList<ChartSeries> Of(JsonObject figure) =>
        [.. figure["data"]!.AsArray().OfType<JsonObject>().Select(trace => Of(trace, figure["layout"]!.AsObject())).OfType<ChartSeries>()];

    private static ChartSeries? Of(JsonObject trace, JsonObject layout)
    {
        if (trace["x"] is not JsonArray across || trace["y"] is not JsonArray up || across.Count != up.Count || across.Count == 0)
        {
            return null;
        }

        IReadOnlyList<object> x = [.. across.Select(Place)];
        IReadOnlyList<double?> y = [.. up.Select(Number)];
        var lines = ((string?)trace["mode"] ?? "").Contains("lines", StringComparison.Ordinal);
        var half = x.Count / 2;
        var isBand = (string?)trace["fill"] == "toself" && half > 0 && x.Take(half).SequenceEqual(x.Skip(half).Reverse());
        var marks = trace["text"] is JsonArray texts && texts.Count == x.Count ? texts.Select(text => FirstLine((string?)text)) : [];
        return new ChartSeries(
            ChartHtml.Plain((string?)trace["name"]),
            isBand ? SeriesKind.Band : lines ? SeriesKind.Line : SeriesKind.Marks,
            TitleOf(layout, "x", (string?)trace["xaxis"]),
            TitleOf(layout, "y", (string?)trace["yaxis"]),
            isBand ? [.. x.Take(half)] : x,
            isBand ? [.. y.Take(half)] : y,
            isBand ? [.. y.Skip(half).Reverse()] : y,
            [.. marks],
            EndsOf(trace["error_y"] as JsonObject, y));
    }

    private static IReadOnlyList<(double Low, double High)> EndsOf(JsonObject? spans, IReadOnlyList<double?> y)
    {
        if (spans?["array"] is not JsonArray above || above.Count != y.Count)
        {
            return [];
        }

        var below = spans["arrayminus"] as JsonArray ?? above;
        return [.. y.Select((value, i) => ((value ?? 0) - (Number(below[i]) ?? 0), (value ?? 0) + (Number(above[i]) ?? 0)))];
    }

    // An axis is called y, y2, y3 in a series, and yaxis, yaxis2, yaxis3 in the layout.
    private static string TitleOf(JsonObject layout, string direction, string? axis)
    {
        var title = layout[$"{direction}axis{axis?[1..]}"]?["title"];
        var words = ChartHtml.Plain(title is JsonObject parts ? (string?)parts["text"] : (string?)title);
        return words.Length > 0 ? words : direction;
    }

    private static object Place(JsonNode? value) => Number(value) is { } number ? number : ChartHtml.Plain(value?.ToString());

    private static double? Number(JsonNode? value) =>
        value is JsonValue && value.GetValueKind() == System.Text.Json.JsonValueKind.Number
            ? double.Parse(value.ToJsonString(), CultureInfo.InvariantCulture)
            : null;

    private static string FirstLine(string? words) => ChartHtml.Plain((words ?? "").Split("<br>")[0]);
}

/// <summary>How a series is drawn.</summary>
internal enum SeriesKind
{
    /// <summary>A mark for each value.</summary>
    Marks,

    /// <summary>A line through all values.</summary>
    Line,

    /// <summary>The surface between two lines.</summary>
    Band,
}
