using System.Globalization;
using System.Runtime.CompilerServices;
using BakeInsights.Reports;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Formatting;

namespace BakeInsights.Notebooks;

/// <summary>Makes a notebook show the toolkit's values. The package calls it by itself when a notebook loads it.</summary>
public static class NotebookExtension
{
    /// <summary>
    /// Registers the formatters and displays the chart library once, so that charts need no network. Lets JavaScript cells
    /// work without a browser that looks on. Also fixes the process's culture, so that a number looks the same on every
    /// machine.
    /// </summary>
    /// <param name="kernel">The host's root kernel. To be called from within a cell, or as part of loading a package.</param>
    public static void Load(Kernel kernel)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        SharedAssemblies.AnswerForFSharpCore();
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        LoadCharts();
        ScriptCells.ShowAsHtml(kernel);
    }

    // Apart and never inlined: the runtime looks for FSharp.Core as soon as it compiles a method that names a chart.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void LoadCharts()
    {
        NotebookFormatters.RegisterAll();
        KernelInvocationContext.Current?.DisplayAs(PlotlyScript.Element, HtmlFormatter.MimeType);
    }
}
