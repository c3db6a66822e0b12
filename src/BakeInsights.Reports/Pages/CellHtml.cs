using System.Text;
using static BakeInsights.Reports.PageEncoding;

namespace BakeInsights.Reports;

/// <summary>A code cell as HTML: its code folded, then what it showed, and where it failed the reason.</summary>
internal static class CellHtml
{
    /// <summary>Writes the cell.</summary>
    /// <param name="body">Receives it.</param>
    /// <param name="code">The cell.</param>
    /// <param name="number">Its place among the code cells, from 1.</param>
    public static void Append(StringBuilder body, PageCode code, int number)
    {
        body.Append("<section class=\"cell\">\n");
        body.Append($"<details><summary>Code: {Encode(code.Name)}</summary>\n");
        body.Append($"<pre tabindex=\"0\"><code>{Encode(code.Source)}</code></pre>\n</details>\n");
        foreach (var shown in code.Outputs)
        {
            var html = OutputHtml.Of(shown);

            // What is too wide scrolls in its box, and only what has the focus is scrolled by keys. Views bring such boxes.
            var focus = OutputHtml.IsWide(html) ? $" role=\"region\" tabindex=\"0\" aria-label=\"{Encode(code.Name)}\"" : "";
            body.Append($"<div class=\"output wide\"{focus}>{html}</div>\n");
        }

        if (code.Error is { } error)
        {
            body.Append($"""
                <div class="failure" id="{NotebookPage.FailureId}">
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
}
