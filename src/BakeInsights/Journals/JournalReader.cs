namespace BakeInsights;

/// <summary>Reads a journal into memory.</summary>
internal static class JournalReader
{
    /// <inheritdoc cref="Journal.Read"/>
    public static Journal Read(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var bakes = new List<Bake>();
        var stream = BakeStream.Read(path, keepsTexts: true, row => bakes.Add(new Bake(row.Copy())));
        return new Journal(NameOf(path), stream.Rows, bakes, stream.Notices.Notices);
    }

    /// <summary>What a journal at this path is called.</summary>
    public static string NameOf(string path) => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
}
