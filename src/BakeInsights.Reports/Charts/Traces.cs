using System.Net;
using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>
/// The few kinds of trace that the charts are made of, by the attribute names of plotly.js: its published reference
/// is the one place where each is explained.
/// </summary>
internal static class Traces
{
    private const int MarkerSize = 9;
    private const int ArrowPixels = 26;

    /// <summary>One mark for each value, with words to show beside the pointer.</summary>
    public static Trace Points(
        string name, IEnumerable<object> x, IEnumerable<double> y, IEnumerable<string> words, (string Colour, string Marker) look, int size = MarkerSize)
    {
        var trace = Scatter(name, x, y, "markers");
        trace.SetProperty("marker", new Dictionary<string, object>
        {
            ["color"] = look.Colour,
            ["symbol"] = look.Marker,
            ["size"] = size,
            ["line"] = new Dictionary<string, object> { ["color"] = "white", ["width"] = 1 },
        });
        trace.SetProperty("text", words.ToArray());
        trace.SetProperty("hovertemplate", "%{text}<extra></extra>");
        return trace;
    }

    /// <summary>A line through values in order.</summary>
    public static Trace Line(string name, IEnumerable<object> x, IEnumerable<double> y, string colour, string dash = "solid")
    {
        var trace = Scatter(name, x, y, "lines");
        trace.SetProperty("line", new Dictionary<string, object> { ["color"] = colour, ["width"] = 2.5, ["dash"] = dash });
        trace.SetProperty("hoverinfo", "skip");
        return trace;
    }

    /// <summary>
    /// The surface between two lines, drawn as one closed outline. The dash of its edge tells it from another band in print
    /// without colour; its name says the dash in words.
    /// </summary>
    public static Trace Band(
        string name, IReadOnlyList<double> x, IEnumerable<double> low, IEnumerable<double> high, (string Colour, double Opacity, string Edge) look)
    {
        var trace = Scatter(
            name, [.. x.Cast<object>(), .. x.Reverse().Cast<object>()], [.. low, .. high.Reverse()], "lines");
        trace.SetProperty("fill", "toself");
        trace.SetProperty("fillcolor", Palette.Sheer(look.Colour, look.Opacity));
        trace.SetProperty("line", new Dictionary<string, object> { ["color"] = look.Colour, ["width"] = 1, ["dash"] = look.Edge });
        trace.SetProperty("hoverinfo", "skip");
        return trace;
    }

    /// <summary>Heights over a grid, a row for each y; its lines and labels are the chart's to set.</summary>
    public static Trace Contour(string name, IEnumerable<double> x, IEnumerable<double> y, IEnumerable<IEnumerable<double?>> heights)
    {
        var trace = new Trace("contour");
        trace.SetProperty("name", name);
        trace.SetProperty("x", x.ToArray());
        trace.SetProperty("y", y.ToArray());
        trace.SetProperty("z", heights.Select(row => row.ToArray()).ToArray());
        trace.SetProperty("showscale", false);
        return trace;
    }

    /// <summary>Puts a stroke through each mark, from one end to the other; marks without a span get none.</summary>
    public static Trace WithSpans(this Trace trace, IEnumerable<(double Low, double Value, double High)> spans, string colour)
    {
        var ends = spans.ToList();
        trace.SetProperty("error_y", Bars(ends, colour));
        return trace;
    }

    /// <summary>The same across.</summary>
    public static Trace WithSpansAcross(this Trace trace, IEnumerable<(double Low, double Value, double High)> spans, string colour)
    {
        var ends = spans.ToList();
        trace.SetProperty("error_x", Bars(ends, colour));
        return trace;
    }

    /// <summary>An arrow upwards from a place: the true value lies above it.</summary>
    public static Dictionary<string, object> ArrowUp(double x, double y) => new()
    {
        ["x"] = x,
        ["y"] = y,
        ["text"] = "",
        ["showarrow"] = true,
        ["arrowhead"] = 2,
        ["arrowwidth"] = 1.5,
        ["arrowcolor"] = Palette.Ink,
        ["ax"] = 0,
        ["ay"] = ArrowPixels,
        ["yshift"] = ArrowPixels,
    };

    private static Dictionary<string, object> Bars(List<(double Low, double Value, double High)> ends, string colour) => new()
    {
        ["type"] = "data",
        ["symmetric"] = false,
        ["array"] = ends.Select(end => end.High - end.Value).ToArray(),
        ["arrayminus"] = ends.Select(end => end.Value - end.Low).ToArray(),
        ["color"] = colour,
        ["thickness"] = 1.5,
        ["width"] = 0,
    };

    /// <summary>
    /// Words to show beside the pointer, a line each. Text of a journal is made harmless: plotly.js reads tags in it.
    /// </summary>
    public static string Words(params IEnumerable<string> lines) => string.Join("<br>", lines.Select(WebUtility.HtmlEncode));

    private static Trace Scatter(string name, IEnumerable<object> x, IEnumerable<double> y, string mode)
    {
        var trace = new Trace("scatter");
        trace.SetProperty("name", name);
        trace.SetProperty("x", x.ToArray());
        trace.SetProperty("y", y.ToArray());
        trace.SetProperty("mode", mode);
        return trace;
    }
}
