using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>What every chart looks like around its data: title, axes with units, legend below.</summary>
internal static class ChartFrame
{
    // At a phone's width plotly.js cuts a title's line that is longer.
    private const int LongestTitleLine = 40;
    private const int TitleLineHeight = 20;

    /// <summary>Traces in the frame.</summary>
    public static GenericChart Around(string title, string xTitle, string yTitle, params IEnumerable<Trace> traces)
    {
        var layout = Layout(title);
        layout.SetProperty("xaxis", Axis(xTitle));
        layout.SetProperty("yaxis", Axis(yTitle));
        return With(layout, traces);
    }

    /// <summary>Traces in a layout.</summary>
    public static GenericChart With(Layout layout, IEnumerable<Trace> traces) =>
        GenericChart.setLayout(layout, GenericChart.ofTraceObjects(false, traces.ToArray()));

    /// <summary>The layout without its axes.</summary>
    public static Layout Layout(string title)
    {
        var lines = Wrap(title);
        var layout = new Layout();
        layout.SetProperty("title", new Dictionary<string, object>
        {
            ["text"] = string.Join("<br>", lines),
            ["font"] = new Dictionary<string, object> { ["size"] = 16 },
            ["x"] = 0.02,
            ["xanchor"] = "left",
            ["y"] = 0.98,
            ["yanchor"] = "top",
        });
        layout.SetProperty("font", new Dictionary<string, object> { ["color"] = Palette.Ink, ["family"] = "system-ui, sans-serif", ["size"] = 13 });
        layout.SetProperty("paper_bgcolor", "white");
        layout.SetProperty("plot_bgcolor", "white");
        layout.SetProperty("hoverlabel", new Dictionary<string, object> { ["align"] = "left" });
        layout.SetProperty("legend", new Dictionary<string, object> { ["orientation"] = "h", ["yref"] = "container", ["y"] = 0.01, ["yanchor"] = "bottom" });
        layout.SetProperty("margin", new Dictionary<string, object>
        {
            ["l"] = 60, ["r"] = 16, ["b"] = 110, ["t"] = 24 + (TitleLineHeight * lines.Count),
        });
        return layout;
    }

    /// <summary>An axis with its title.</summary>
    public static Dictionary<string, object> Axis(string title) => new()
    {
        ["title"] = new Dictionary<string, object> { ["text"] = title, ["standoff"] = 8 },
        ["gridcolor"] = Palette.Grid,
        ["zeroline"] = false,
        ["automargin"] = true,
    };

    private static List<string> Wrap(string title)
    {
        List<string> lines = [""];
        foreach (var word in title.Split(' '))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > LongestTitleLine)
            {
                lines.Add("");
            }

            lines[^1] += lines[^1].Length > 0 ? " " + word : word;
        }

        return lines;
    }
}
