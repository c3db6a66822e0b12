namespace BakeInsights.Reports;

/// <summary>Something a cell displayed.</summary>
public abstract record PageOutput
{
    private protected PageOutput()
    {
    }
}

/// <summary>Plain text; encoded on the page.</summary>
/// <param name="Text">The text as displayed, line breaks kept.</param>
public sealed record PageText(string Text) : PageOutput;

/// <summary>
/// HTML that a formatter made, put on the page as it is. Whoever makes it has encoded every text that is not its own,
/// a journal's above all. A script in it runs if the toolkit wrote it or if it stands in the cell's source, and no other.
/// </summary>
/// <param name="Html">A fragment that is well-formed by itself.</param>
public sealed record PageHtml(string Html) : PageOutput;

/// <summary>Markdown made by a cell; raw HTML in it is shown as text.</summary>
/// <param name="Text">The Markdown.</param>
public sealed record PageMarkdownOutput(string Text) : PageOutput;

/// <summary>A picture, kept inside the page.</summary>
/// <param name="MediaType">Such as <c>image/png</c>.</param>
/// <param name="Base64">The bytes in Base64.</param>
public sealed record PageImage(string MediaType, string Base64) : PageOutput;
