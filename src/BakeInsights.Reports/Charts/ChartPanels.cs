namespace BakeInsights.Reports;

/// <summary>Charts of several panels: which part of the drawing each takes, and the words beside them.</summary>
internal static class ChartPanels
{
    private const int NoteSize = 12;

    /// <summary>The share of the drawing that a panel takes, the first at the top; a panel's height counts its rows.</summary>
    /// <param name="heights">The heights of the panels, in any unit.</param>
    /// <param name="gap">The height between two, in the same unit.</param>
    public static IReadOnlyList<double[]> Stacked(IReadOnlyList<double> heights, double gap)
    {
        var whole = heights.Sum() + (gap * (heights.Count - 1));
        var above = 0.0;
        List<double[]> shares = [];
        foreach (var height in heights)
        {
            shares.Add([Math.Max(0, 1 - ((above + height) / whole)), 1 - (above / whole)]);
            above += height + gap;
        }

        return shares;
    }

    /// <summary>What an axis is called in a series (x, x2, x3) by its place.</summary>
    public static string Name(string direction, int place) => place == 0 ? direction : FormattableString.Invariant($"{direction}{place + 1}");

    /// <summary>The same in the layout (xaxis, xaxis2).</summary>
    public static string LayoutName(string direction, int place) => place == 0 ? direction + "axis" : FormattableString.Invariant($"{direction}axis{place + 1}");

    /// <summary>Words at a place; the place is in the axes' units, or in shares of the panel where the axis's name ends in "domain".</summary>
    public static Dictionary<string, object> Note(string words, (string Axis, double At) x, (string Axis, double At) y, bool isBold = false) => new()
    {
        ["text"] = isBold ? $"<b>{words}</b>" : words,
        ["showarrow"] = false,
        ["align"] = "left",
        ["xref"] = x.Axis,
        ["x"] = x.At,
        ["xanchor"] = "left",
        ["yref"] = y.Axis,
        ["y"] = y.At,
        ["yanchor"] = "bottom",
        ["bgcolor"] = "rgba(255,255,255,0.85)",
        ["font"] = new Dictionary<string, object> { ["size"] = NoteSize },
    };

    /// <summary>An upright line through a panel, at nothing.</summary>
    public static Dictionary<string, object> AtNothing(string xAxis, string yAxis) => new()
    {
        ["type"] = "line",
        ["xref"] = xAxis,
        ["x0"] = 0,
        ["x1"] = 0,
        ["yref"] = yAxis + " domain",
        ["y0"] = 0,
        ["y1"] = 1,
        ["line"] = new Dictionary<string, object> { ["color"] = Palette.Ink, ["width"] = 1.5 },
    };
}
