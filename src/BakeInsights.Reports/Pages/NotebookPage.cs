using System.Reflection;
using System.Text;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>
/// Writes an executed notebook as one HTML file that needs nothing else: no network, no other file, and for its text
/// and tables no scripts. The same notebook gives the same bytes.
/// </summary>
public static class NotebookPage
{
    /// <summary>Nothing may be fetched and nothing sent; what the page needs stands in it.</summary>
    private const string Policy =
        "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:; "
        + "base-uri 'none'; form-action 'none'";

    private static readonly string Style = ReadStyle();

    /// <summary>Writes the page.</summary>
    /// <param name="notebook">The executed notebook.</param>
    /// <param name="output">Receives the page; to be saved as UTF-8.</param>
    public static void Write(PageNotebook notebook, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(output);
        var titleCell = notebook.Cells.OfType<PageMarkdown>().FirstOrDefault();
        var ownTitle = titleCell is null ? null : MarkdownHtml.FirstTitle(titleCell.Text);
        var body = new StringBuilder();
        var number = 0;
        foreach (var cell in notebook.Cells)
        {
            switch (cell)
            {
                case PageMarkdown words:
                    var keepTitle = ownTitle is not null && ReferenceEquals(words, titleCell);
                    body.Append($"<section class=\"words\">\n{MarkdownHtml.Render(words.Text, keepTitle)}</section>\n");
                    break;
                case PageCode code:
                    AppendCode(body, code, ++number);
                    break;
            }
        }

        var content = body.ToString();
        var heading = ownTitle is null ? $"<h1>{Encode(notebook.Title)}</h1>\n" : "";

        // The library is a few megabytes: at the end, the words can be read before it is.
        var plotly = content.Contains("class=\"bake-chart\"", StringComparison.Ordinal)
            ? PlotlyScript.Element + "\n"
            : "";
        output.Write($"""
            <!DOCTYPE html>
            <html lang="{Encode(notebook.Language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="generator" content="BakeInsights">
            <title>{Encode(ownTitle ?? notebook.Title)}</title>
            <style>
            {Style}</style>
            </head>
            <body>
            <main>
            {heading}{FailureNote(notebook)}{content}</main>
            {plotly}</body>
            </html>

            """.ReplaceLineEndings("\n"));
    }

    private static string FailureNote(PageNotebook notebook)
    {
        var failed = notebook.Cells.OfType<PageCode>().FirstOrDefault(cell => cell.Error is not null);
        return failed is null
            ? ""
            : $"<p class=\"failure\">This page is incomplete: the cell <a href=\"#failure\">{Encode(failed.Name)}</a> failed.</p>\n";
    }

    private static void AppendCode(StringBuilder body, PageCode code, int number)
    {
        body.Append("<section class=\"cell\">\n");
        body.Append($"<details><summary>Code: {Encode(code.Name)}</summary>\n");
        body.Append($"<pre><code>{Encode(code.Source)}</code></pre>\n</details>\n");
        foreach (var shown in code.Outputs)
        {
            body.Append($"<div class=\"output wide\">{OutputHtml.Of(shown)}</div>\n");
        }

        if (code.Error is { } error)
        {
            body.Append($"""
                <div class="failure" id="failure">
                <p><strong>Code cell {number} failed: {Encode(code.Name)}</strong></p>
                <pre>{Encode(error)}</pre>
                <p>The cells after it were not run.</p>
                </div>

                """);
        }
        else if (!code.HasRun)
        {
            body.Append("<p class=\"not-run\">Not run, because an earlier cell failed.</p>\n");
        }

        body.Append("</section>\n");
    }

    private static string ReadStyle()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("BakeInsights.Reports.page.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
