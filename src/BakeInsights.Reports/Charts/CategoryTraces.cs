using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Traces over names instead of numbers, by the attribute names of plotly.js.</summary>
internal static class CategoryTraces
{
    private const int SmallMark = 7;
    private const int LargeMark = 12;

    /// <summary>One mark for each value, half let through so that those that coincide are seen.</summary>
    public static Trace Points(
        string name, IEnumerable<string> categories, IEnumerable<double> y, IEnumerable<string> words, (string Colour, string Marker) look)
    {
        var trace = Traces.Points(name, categories, y, words, look);
        trace.SetProperty("marker", Marker(look, SmallMark));
        trace.SetProperty("opacity", 0.6);
        return trace;
    }

    /// <summary>A mark with its interval for each category.</summary>
    public static Trace Intervals(
        string name, IEnumerable<string> categories, IReadOnlyList<Estimate> estimates, (string Colour, string Marker) look)
    {
        var trace = Traces.Points(
            name, categories, estimates.Select(estimate => estimate.Value),
            estimates.Select(estimate => $"{Figures.Significant(estimate.Value)} ({Figures.Significant(estimate.Low!.Value)} to {Figures.Significant(estimate.High!.Value)})"),
            look);
        trace.SetProperty("marker", Marker(look, LargeMark));
        trace.SetProperty("error_y", new Dictionary<string, object>
        {
            ["type"] = "data",
            ["symmetric"] = false,
            ["array"] = estimates.Select(estimate => estimate.High!.Value - estimate.Value).ToArray(),
            ["arrayminus"] = estimates.Select(estimate => estimate.Value - estimate.Low!.Value).ToArray(),
            ["color"] = look.Colour,
            ["thickness"] = 2,
            ["width"] = 6,
        });
        return trace;
    }

    /// <summary>An axis of names in a fixed order, with its title; names that look like numbers stay names.</summary>
    public static Dictionary<string, object> Axis(string title, IEnumerable<string> categories)
    {
        var axis = ChartFrame.Axis(title);
        axis["type"] = "category";
        axis["categoryorder"] = "array";
        axis["categoryarray"] = categories.ToArray();
        return axis;
    }

    private static Dictionary<string, object> Marker((string Colour, string Marker) look, int size) => new()
    {
        ["color"] = look.Colour,
        ["symbol"] = look.Marker,
        ["size"] = size,
        ["line"] = new Dictionary<string, object> { ["color"] = "white", ["width"] = 1 },
    };
}
