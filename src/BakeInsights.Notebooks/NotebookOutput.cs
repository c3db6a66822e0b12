using System.Collections.Immutable;

namespace BakeInsights.Notebooks;

/// <summary>One output of a code cell.</summary>
public abstract record NotebookOutput
{
    private protected NotebookOutput()
    {
    }
}

/// <summary>Text that the cell printed.</summary>
/// <param name="Name"><c>stdout</c> or <c>stderr</c>.</param>
/// <param name="Text">The text.</param>
public sealed record PrintedText(string Name, string Text) : NotebookOutput;

/// <summary>A value that the cell displayed, in one or more forms.</summary>
/// <param name="Forms">The value by media type, the best form first.</param>
/// <param name="IsResult">Whether it is the value of the cell's last expression.</param>
public sealed record ShownValue(ImmutableArray<KeyValuePair<string, string>> Forms, bool IsResult) : NotebookOutput;

/// <summary>Why the cell failed.</summary>
/// <param name="Kind">The kind of error, such as an exception's type name.</param>
/// <param name="Message">What went wrong, possibly several lines.</param>
public sealed record CellError(string Kind, string Message) : NotebookOutput;
