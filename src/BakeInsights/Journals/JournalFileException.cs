namespace BakeInsights;

/// <summary>A journal that can't be read at all: its file is missing, empty, or not a table of bakes.</summary>
public sealed class JournalFileException : IOException
{
    /// <summary>Says which file, what is wrong with it, and what to do.</summary>
    public JournalFileException(string path, string reason, string remedy, Exception? inner = null)
        : base($"{path}: {reason} {remedy}", inner)
    {
        Path = path;
        Reason = reason;
        Remedy = remedy;
    }

    /// <summary>The file or folder as it was asked for.</summary>
    public string Path { get; }

    /// <summary>What is wrong, one sentence.</summary>
    public string Reason { get; }

    /// <summary>What to do, one sentence.</summary>
    public string Remedy { get; }
}
