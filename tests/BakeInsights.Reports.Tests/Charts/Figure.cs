using System.Text.Json.Nodes;
using Plotly.NET;

namespace BakeInsights.Reports.Tests;

/// <summary>A chart as the drawing library is given it.</summary>
internal sealed class Figure(GenericChart chart)
{
    private readonly JsonNode _figure = JsonNode.Parse(GenericChart.toFigureJson(chart))!;

    public JsonNode Layout => _figure["layout"]!;

    public string Title => (string)Layout["title"]!["text"]!;

    public IReadOnlyList<JsonNode> Traces => [.. _figure["data"]!.AsArray().Select(trace => trace!)];

    public IReadOnlyList<string> Notes => [.. Layout["annotations"]!.AsArray().Select(note => (string)note!["text"]!)];

    public JsonNode Trace(string name) => Traces.Single(trace => (string?)trace["name"] == name);

    public static double[] Numbers(JsonNode? values) => [.. values!.AsArray().Select(value => (double)value!)];

    public static string[] Texts(JsonNode? values) => [.. values!.AsArray().Select(value => (string)value!)];

    /// <summary>The lower and upper ends of a trace's intervals along an axis.</summary>
    public static IReadOnlyList<(double Low, double High)> Ends(JsonNode trace, string axis)
    {
        var (at, up, down) = (Numbers(trace[axis]), Numbers(trace["error_" + axis]!["array"]), Numbers(trace["error_" + axis]!["arrayminus"]));
        return [.. at.Select((value, i) => (Math.Round(value - down[i], 9), Math.Round(value + up[i], 9)))];
    }
}
