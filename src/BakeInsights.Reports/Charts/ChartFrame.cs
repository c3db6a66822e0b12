using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>What every chart looks like around its data: axes with units, legend below; the title becomes its caption.</summary>
internal static class ChartFrame
{
    /// <summary>Traces in the frame.</summary>
    public static GenericChart Around(string title, string xTitle, string yTitle, params IEnumerable<Trace> traces)
    {
        return Around(title, Axis(xTitle), yTitle, traces);
    }

    /// <summary>Traces in the frame, over an axis of the chart's own.</summary>
    public static GenericChart Around(string title, Dictionary<string, object> xAxis, string yTitle, params IEnumerable<Trace> traces)
    {
        var layout = Layout(title);
        layout.SetProperty("xaxis", xAxis);
        layout.SetProperty("yaxis", Axis(yTitle));
        return With(layout, traces);
    }

    /// <summary>Traces in a layout.</summary>
    public static GenericChart With(Layout layout, IEnumerable<Trace> traces) =>
        GenericChart.setLayout(layout, GenericChart.ofTraceObjects(false, traces.ToArray()));

    /// <summary>The layout without its axes.</summary>
    public static Layout Layout(string title)
    {
        var layout = new Layout();
        layout.SetProperty("title", new Dictionary<string, object> { ["text"] = title });
        layout.SetProperty("font", new Dictionary<string, object>
        {
            ["color"] = Palette.Ink, ["family"] = "system-ui, sans-serif", ["size"] = 13,
        });
        layout.SetProperty("paper_bgcolor", "white");
        layout.SetProperty("plot_bgcolor", "white");
        layout.SetProperty("hoverlabel", new Dictionary<string, object> { ["align"] = "left" });
        layout.SetProperty("legend", new Dictionary<string, object>
        {
            ["orientation"] = "h", ["yref"] = "container", ["y"] = 0.01, ["yanchor"] = "bottom",
        });
        layout.SetProperty("margin", new Dictionary<string, object> { ["l"] = 60, ["r"] = 16, ["b"] = 110, ["t"] = 34 });
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
}
