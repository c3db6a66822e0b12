using System.Text;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>
/// Writes an executed notebook as one HTML file that needs nothing else: no network, no other file, and for its text
/// and tables no scripts. The same notebook gives the same bytes.
/// </summary>
public static class NotebookPage
{
    /// <summary>The id of the place where a cell failed.</summary>
    internal const string FailureId = "failure";

    private static readonly string Style = OwnFile.Text("page.css");

    /// <summary>Writes the page.</summary>
    /// <param name="notebook">The executed notebook.</param>
    /// <param name="output">Receives the page; to be saved as UTF-8.</param>
    public static void Write(PageNotebook notebook, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(output);
        var titleCell = notebook.Cells.OfType<PageMarkdown>().FirstOrDefault();
        var ownTitle = titleCell is null ? null : MarkdownHtml.FirstTitle(titleCell.Text);
        var heading = ownTitle is null ? $"<h1>{Encode(notebook.Title)}</h1>\n" : "";
        var contents = new PageContents();
        var (first, body) = (new StringBuilder(), new StringBuilder());
        var scripts = new PageScripts();
        var number = 0;
        foreach (var cell in notebook.Cells)
        {
            switch (cell)
            {
                case PageMarkdown words:
                    // The title and what stands below it come before the contents, the sections after them.
                    var isFirst = ownTitle is not null && ReferenceEquals(words, titleCell);
                    (isFirst && ReferenceEquals(cell, notebook.Cells[0]) ? first : body)
                        .Append($"<section class=\"words\">\n{MarkdownHtml.Render(words.Text, isFirst, contents)}</section>\n");
                    break;
                case PageCode code:
                    CellHtml.Append(body, code, ++number);
                    foreach (var html in code.Outputs.OfType<PageHtml>())
                    {
                        scripts.Add(html.Html, code.Source);
                    }

                    break;
            }
        }

        AppendProvenance(body, notebook, contents);
        var content = body.ToString();

        // The library is a few megabytes: at the end, the words can be read before it is.
        var plotly = "";
        if (content.Contains("class=\"bake-chart\"", StringComparison.Ordinal))
        {
            plotly = PlotlyScript.Element + "\n";
            scripts.Add(PlotlyScript.Text);
        }

        output.Write($"""
            <!DOCTYPE html>
            <html lang="{Encode(notebook.Language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{scripts.Policy()}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="generator" content="BakeInsights">
            <title>{Encode(ownTitle ?? notebook.Title)}</title>
            <style>
            {Style}</style>
            </head>
            <body>
            <main>
            {heading}{FailureNote(notebook)}{WithContents(first.ToString(), contents)}{content}</main>
            {plotly}</body>
            </html>

            """);
    }

    // A title's cell may go on with the first sections.
    private static string WithContents(string first, PageContents contents)
    {
        var section = first.IndexOf("<h2 ", StringComparison.Ordinal);
        return section < 0 ? first + contents.ToHtml() : first.Insert(section, contents.ToHtml());
    }

    private static string FailureNote(PageNotebook notebook)
    {
        var failed = notebook.Cells.OfType<PageCode>().FirstOrDefault(cell => cell.Error is not null);
        return failed is null
            ? ""
            : $"<p class=\"failure\">This page is incomplete: the cell <a href=\"#{FailureId}\">{Encode(failed.Name)}</a> failed.</p>\n";
    }

    private static void AppendProvenance(StringBuilder body, PageNotebook notebook, PageContents contents)
    {
        const string title = "Where this page comes from";
        if (notebook.Provenance.IsEmpty)
        {
            return;
        }

        body.Append($"<section class=\"provenance\">\n<h2 id=\"{contents.Add(title)}\">{title}</h2>\n<div class=\"wide\"><table>\n");
        foreach (var fact in notebook.Provenance)
        {
            body.Append($"<tr><th scope=\"row\">{Encode(fact.Name)}</th><td>{Encode(fact.Value)}</td></tr>\n");
        }

        body.Append("</table></div>\n</section>\n");
    }
}
