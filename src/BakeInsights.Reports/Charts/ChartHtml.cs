using System.Net;
using System.Text.Encodings.Web;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Turns a chart into HTML that needs nothing but <c>window.Plotly</c>; see <see cref="PlotlyScript"/>.</summary>
public static partial class ChartHtml
{
    /// <summary>
    /// Draws every chart of the document that has not been drawn yet, with a button that saves it. A chart is found by
    /// its class and not by an id, so a cell that runs twice, or two notebooks on one page, can't draw into each other's
    /// charts.
    /// </summary>
    internal static readonly string DrawWaitingCharts = OwnFile.Text("draw-charts.js");

    // A height is needed before the chart is drawn: it keeps the text below from jumping.
    private const int UsualHeightPixels = 450;

    // What a file is called that holds a chart without a title.
    private const string UntitledFile = "chart";

    /// <summary>
    /// The chart as a fragment: its title as a caption, which wraps on a phone where the drawing library would cut it,
    /// its figure as data, a script that draws it at once if Plotly is there and leaves it waiting if not, and the same
    /// in words and tables, folded. The width is that of its place on the page; a height and margins stay if the chart
    /// sets them.
    /// </summary>
    /// <param name="chart">The chart. The same chart gives the same text.</param>
    public static string Fragment(GenericChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var title = TitleOf(chart);
        var figure = FigureOf(chart, title);
        var height = (int?)figure["layout"]!["height"] ?? UsualHeightPixels;
        var caption = HtmlEncoder.Default.Encode(title);
        var words = ChartWords.Of(figure);
        var label = HtmlEncoder.Default.Encode($"{PlainText(chart)}. {words}");
        var data = new View([new ViewParagraph(words), .. ChartTables.Of(figure)]).ToHtml();

        // The default JSON encoder escapes <, > and &, so text in a figure can't end the script element.
        return $"""
            <figure class="bake-figure" style="margin:1em 0">
            <figcaption style="font-weight:600">{caption}</figcaption>
            <div class="bake-chart" role="img" aria-label="{label}" style="height:{height}px">
            <noscript>{label} (drawn by a script, and scripts are switched off here)</noscript>
            <script type="application/json">{figure.ToJsonString()}</script>
            </div>
            <details class="bake-data"><summary>The chart in words and numbers</summary>
            {data}</details>
            </figure>
            <script>{DrawWaitingCharts}</script>
            """;
    }

    /// <summary>The chart for readers of plain text: that it is one, and its title.</summary>
    public static string PlainText(GenericChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        return TitleOf(chart) is { Length: > 0 } title ? $"Chart: {title}" : "Chart";
    }

    /// <summary>A text of a figure as it is read: the drawing library knows a few tags and entities in it.</summary>
    internal static string Plain(string? text) => WebUtility.HtmlDecode(Tag().Replace(text ?? "", " ")).Trim();

    private static string TitleOf(GenericChart chart) =>
        Plain(JsonNode.Parse(GenericChart.toFigureJson(chart))!["layout"]!["title"] switch
        {
            JsonObject parts => (string?)parts["text"],
            JsonValue text => (string?)text,
            _ => null,
        });

    private static JsonObject FigureOf(GenericChart chart, string title)
    {
        var written = JsonNode.Parse(GenericChart.toFigureJson(chart))!;
        var layout = written["layout"]!.DeepClone().AsObject();

        // Plotly.NET writes its own default size into every layout, and a fixed width does not fit a phone; the title is
        // the caption.
        layout.Remove("width");
        layout.Remove("title");
        if ((int?)layout["height"] == Defaults.DefaultHeight)
        {
            layout.Remove("height");
        }

        // Plotly's own margins, made for wide screens, leave a phone half of its width.
        layout["margin"] ??= new JsonObject { ["l"] = 56, ["r"] = 16, ["t"] = 56, ["b"] = 56 };
        return new JsonObject
        {
            ["data"] = written["data"]!.DeepClone(),
            ["layout"] = layout,
            ["config"] = new JsonObject
            {
                ["responsive"] = true,
                ["displaylogo"] = false,
                ["toImageButtonOptions"] = new JsonObject { ["format"] = "svg", ["filename"] = FileNameOf(title) },
            },
        };
    }

    private static string FileNameOf(string title)
    {
        var name = NoPartOfAName().Replace(title.ToLowerInvariant(), "-").Trim('-');
        return name.Length > 0 ? name : UntitledFile;
    }

    [GeneratedRegex("<[^<>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NoPartOfAName();
}
