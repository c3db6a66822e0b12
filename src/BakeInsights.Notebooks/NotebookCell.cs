using System.Collections.Immutable;

namespace BakeInsights.Notebooks;

/// <summary>One cell of a notebook.</summary>
public sealed record NotebookCell
{
    // Of C# and JavaScript, and of HTML.
    private static readonly string[] Comments = ["//", "<!--"];

    /// <summary>The cell's id, unique in its notebook.</summary>
    public required string Id { get; init; }

    /// <summary>True for code, false for Markdown and raw text.</summary>
    public required bool IsCode { get; init; }

    /// <summary>The text as written, lines ended by <c>\n</c>.</summary>
    public required string Source { get; init; }

    /// <summary>The kernel that the cell asks for, null for the notebook's own.</summary>
    public string? KernelName { get; init; }

    /// <summary>The cell's tags.</summary>
    public ImmutableArray<string> Tags { get; init; } = [];

    /// <summary>What the cell gave when it ran; empty if it has not run.</summary>
    public ImmutableArray<NotebookOutput> Outputs { get; init; } = [];

    /// <summary>The cell's place in the order of running, from 1; null if it has not run.</summary>
    public int? ExecutionCount { get; init; }

    /// <summary>What a reader calls the cell: its first comment, or else its first line.</summary>
    public string Name
    {
        get
        {
            // A line such as #!html says whose cell it is, not what it does.
            var lines = Source.Split('\n').Select(line => line.Trim())
                .Where(line => line.Length > 0 && !line.StartsWith("#!", StringComparison.Ordinal)).ToArray();
            var comment = lines.FirstOrDefault(line => Comments.Any(mark => line.StartsWith(mark, StringComparison.Ordinal)));
            return comment?.Trim('/', '<', '!', '-', '>', ' ') ?? lines.FirstOrDefault() ?? "(empty)";
        }
    }
}
