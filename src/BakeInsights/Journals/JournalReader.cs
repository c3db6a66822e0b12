using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Reads a journal into memory.</summary>
internal static class JournalReader
{
    /// <inheritdoc cref="Journal.Read"/>
    public static Journal Read(string path, TimeZoneInfo? zone)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var rows = new List<RowValues>();
        var stream = BakeStream.Read(path, keepsTexts: true, zone, row => rows.Add(row.Copy()));
        var side = Directory.Exists(path)
            ? SideFiles.Read(path, rows.Select(row => row.Of(C.Id)!).ToHashSet(StringComparer.Ordinal), stream.Notices)
            : SideFiles.None;
        LoafMeans.Fill(rows, side.Loaves, stream.Notices);
        IReadOnlyList<JournalFile> files = [.. stream.Files, .. side.Files];
        return new Journal(NameOf(path), stream.Rows, [.. rows.Select(row => new Bake(row))], InOrder(stream.Notices.Notices, files))
        {
            Loaves = side.Loaves,
            Attributes = side.Attributes,
            Scores = side.Scores,
            RiseReadings = side.RiseReadings,
            ProbeReadings = side.ProbeReadings,
            Cups = side.Cups,
            FormulaLines = side.FormulaLines,
            Files = files,
        };
    }

    /// <summary>What a journal at this path is called.</summary>
    public static string NameOf(string path) => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));

    // Some remarks on bakes can be made only when the loaves are read.
    private static IReadOnlyList<Notice> InOrder(IReadOnlyList<Notice> notices, IReadOnlyList<JournalFile> files)
    {
        var places = files.Index().ToDictionary(each => each.Item.Name, each => each.Index, StringComparer.Ordinal);
        return [.. notices.OrderBy(notice => places[notice.File]).ThenBy(notice => notice.Line)];
    }
}
