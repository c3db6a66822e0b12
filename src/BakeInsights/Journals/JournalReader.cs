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
        return new Journal(stream.Reading, bakes);
    }
}
