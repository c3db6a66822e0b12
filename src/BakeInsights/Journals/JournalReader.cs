using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>Reads a journal into memory.</summary>
internal static class JournalReader
{
    /// <summary>
    /// Up to this many bakes a journal is kept in memory, with the files beside them; past it, bakes go by one at a
    /// time and the other files are not read.
    /// </summary>
    public const int KeptBakes = 50_000;

    /// <inheritdoc cref="Journal.Read"/>
    public static Journal Read(string path, TimeZoneInfo? zone)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var rows = new List<RowValues>();
        var stream = BakeStream.Read(path, textsOf: int.MaxValue, row => rows.Add(row.Copy()), zone);
        return Assemble(path, rows, stream);
    }

    /// <summary>Makes a journal of the rows that were kept, and of the files beside them.</summary>
    public static Journal Assemble(string path, IReadOnlyList<RowValues> rows, BakeStream stream)
    {
        var side = Directory.Exists(path)
            ? SideFiles.Read(path, rows.Select(row => row.Of(C.Id)!).ToHashSet(StringComparer.Ordinal), stream.Log)
            : SideFiles.None;
        LoafMeans.Fill(rows, side.Loaves, stream.Log);
        MedianSlips.Remark(rows, stream.Log);
        IReadOnlyList<JournalFile> files = [.. stream.Files, .. side.Files];
        var reading = stream.Reading;
        return new Journal(reading with { Notices = InOrder(reading.Notices, files) }, [.. rows.Select(row => new Bake(row))])
        {
            Loaves = side.Loaves,
            Attributes = side.Attributes,
            Scores = side.Scores,
            RiseReadings = side.RiseReadings,
            TemperatureReadings = side.TemperatureReadings,
            Cups = side.Cups,
            FormulaIngredients = side.FormulaIngredients,
            Files = files,
        };
    }

    // Some remarks on bakes can be made only when the loaves are read.
    private static IReadOnlyList<Notice> InOrder(IReadOnlyList<Notice> notices, IReadOnlyList<JournalFile> files)
    {
        var places = files.Index().ToDictionary(each => each.Item.Name, each => each.Index, StringComparer.Ordinal);
        return [.. notices.OrderBy(notice => places[notice.File]).ThenBy(notice => notice.Line)];
    }
}
