namespace BakeInsights.Reports;

/// <summary>Something to read: the same words and numbers on a page, in a notebook and on a terminal.</summary>
/// <param name="Blocks">Its parts, in order.</param>
public sealed record View(IReadOnlyList<ViewBlock> Blocks)
{
    /// <summary>The view as HTML. Everything that comes from a journal is encoded.</summary>
    public string ToHtml() => ViewHtml.Write(this);

    /// <summary>The view as plain text, no line longer than <paramref name="width"/> where words allow it.</summary>
    public string ToText(int width = ViewText.UsualWidth) => ViewText.Write(this, width);
}

/// <summary>A part of a view.</summary>
public abstract record ViewBlock;

/// <summary>A heading.</summary>
/// <param name="Text">Its words.</param>
public sealed record ViewHeading(string Text) : ViewBlock;

/// <summary>A paragraph.</summary>
/// <param name="Text">Its words.</param>
public sealed record ViewParagraph(string Text) : ViewBlock;

/// <summary>A list without order.</summary>
/// <param name="Items">One sentence or so each.</param>
public sealed record ViewList(IReadOnlyList<string> Items) : ViewBlock;

/// <summary>A table.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">A cell for each column.</param>
public sealed record ViewTable(string Caption, IReadOnlyList<ViewColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
    : ViewBlock;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading, with the unit.</param>
/// <param name="IsNumber">Whether its cells are numbers, to be set flush right.</param>
public sealed record ViewColumn(string Title, bool IsNumber);
