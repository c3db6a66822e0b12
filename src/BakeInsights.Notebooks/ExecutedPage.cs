using System.Collections.Immutable;
using System.Text.RegularExpressions;
using BakeInsights.Reports;

namespace BakeInsights.Notebooks;

/// <summary>An executed notebook as the neutral model that a page is written from.</summary>
public static partial class ExecutedPage
{
    private const string ImagePrefix = "image/";

    /// <summary>The run as a page's content.</summary>
    /// <param name="run">What running the notebook gave.</param>
    /// <param name="title">What to call the page if the notebook has no heading, such as its file's name.</param>
    public static PageNotebook From(NotebookRun run, string title)
    {
        ArgumentNullException.ThrowIfNull(run);
        return new PageNotebook(title, [.. run.Notebook.Cells.Where(c => c.Source.Length > 0).Select(Cell)])
        {
            Provenance = run.Provenance,
        };
    }

    private static PageCell Cell(NotebookCell cell) => !cell.IsCode
        ? new PageMarkdown(cell.Source)
        : new PageCode(cell.Name, cell.Source, [.. cell.Outputs.Select(Output).OfType<PageOutput>()])
        {
            Error = cell.Outputs.OfType<CellError>().FirstOrDefault()?.Message,
            HasRun = cell.ExecutionCount is not null,
        };

    private static PageOutput? Output(NotebookOutput output) => output switch
    {
        PrintedText text => new PageText(text.Text),
        ShownValue value => Shown(value.Forms),
        _ => null,
    };

    private static PageOutput? Shown(ImmutableArray<KeyValuePair<string, string>> forms)
    {
        var byType = forms.ToDictionary(form => form.Key, form => form.Value);
        if (byType.TryGetValue("text/html", out var html))
        {
            // The page brings the chart library itself.
            return html == PlotlyScript.Element ? null : new PageHtml(HostStyle().Replace(html, ""));
        }

        if (byType.TryGetValue("text/markdown", out var words))
        {
            return new PageMarkdownOutput(words);
        }

        var image = forms.FirstOrDefault(form => form.Key.StartsWith(ImagePrefix, StringComparison.Ordinal));
        return image.Key switch
        {
            null => forms is [var first, ..] ? new PageText(byType.GetValueOrDefault("text/plain", first.Value)) : null,
            "image/svg+xml" => new PageHtml(image.Value),
            _ => new PageImage(image.Key, image.Value.ReplaceLineEndings("")),
        };
    }

    // The host repeats its style sheet in each of its own outputs, with rules for every table of the page.
    [GeneratedRegex(@"<style>\s*\.dni-[^<]*</style>")]
    private static partial Regex HostStyle();
}
