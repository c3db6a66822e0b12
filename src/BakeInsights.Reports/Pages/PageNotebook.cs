using System.Collections.Immutable;

namespace BakeInsights.Reports;

/// <summary>An executed notebook, as far as a reader is concerned: no kernel, no file format.</summary>
/// <param name="Title">The page's title, used as its heading unless the first Markdown cell brings one.</param>
/// <param name="Cells">The cells in reading order.</param>
public sealed record PageNotebook(string Title, ImmutableArray<PageCell> Cells)
{
    /// <summary>The language of the words, as a BCP 47 tag.</summary>
    public string Language { get; init; } = "en";

    /// <summary>What the page was made from and by, for the block at its end; empty for none.</summary>
    public ImmutableArray<PageFact> Provenance { get; init; } = [];
}

/// <summary>One line about where a page comes from.</summary>
/// <param name="Name">What is said, such as <c>Journal</c>.</param>
/// <param name="Value">The rest.</param>
public sealed record PageFact(string Name, string Value);

/// <summary>One cell: <see cref="PageMarkdown"/> or <see cref="PageCode"/>.</summary>
public abstract record PageCell
{
    private protected PageCell()
    {
    }
}

/// <summary>Words in Markdown. Raw HTML in it is shown as text.</summary>
/// <param name="Text">The Markdown as written.</param>
public sealed record PageMarkdown(string Text) : PageCell;

/// <summary>Code and what it gave.</summary>
/// <param name="Name">What a reader calls the cell: its first comment, or its first line.</param>
/// <param name="Source">The code as it ran.</param>
/// <param name="Outputs">What the cell displayed, in that order.</param>
public sealed record PageCode(string Name, string Source, ImmutableArray<PageOutput> Outputs) : PageCell
{
    /// <summary>Why the cell failed, null if it did not.</summary>
    public string? Error { get; init; }

    /// <summary>False if an earlier failure kept the cell from running.</summary>
    public bool HasRun { get; init; } = true;
}
