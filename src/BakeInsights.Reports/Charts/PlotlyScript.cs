using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>The drawing library that every chart needs, as script text to be put on a page or in a notebook once.</summary>
public static class PlotlyScript
{
    /// <summary>The library's version.</summary>
    public const string Version = "2.28.0";

    private const string ResourceName = $"Plotly.NET.plotly-{Version}.min.js";

    private static readonly Lazy<string> Definition = new(Build);

    /// <summary>
    /// Script text, without a script element around it, that defines <c>window.Plotly</c> and then draws every chart
    /// that is waiting for it. It loads nothing.
    /// </summary>
    public static string Text => Definition.Value;

    /// <summary>The same in a script element, for a notebook's output.</summary>
    public static string Element => $"<script>{Text}</script>";

    private static string Build()
    {
        var assembly = typeof(GenericChart).Assembly;
        using var stream = assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"{assembly.GetName().Name} carries no resource {ResourceName}.");
        using var reader = new StreamReader(stream);

        // The library hands itself to a module loader when it sees one, and classic Jupyter has one; window.Plotly
        // would stay undefined. Inside this function the loader's names mean nothing.
        return $$"""
            (function () {
            if (!window.Plotly) {
            (function (define, module, exports) {
            {{reader.ReadToEnd()}}
            }).call(window);
            }
            {{ChartHtml.DrawWaitingCharts}}
            })();
            """;
    }
}
