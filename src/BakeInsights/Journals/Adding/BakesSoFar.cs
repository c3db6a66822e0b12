namespace BakeInsights;

/// <summary>What adding a bake needs to know of those that a journal has.</summary>
/// <param name="Last">The last bake; null when there is none.</param>
/// <param name="NextId">The next name in the journal's own numbering; null when it has none.</param>
/// <param name="HolderOfId">Where the bake with the name looked for stands; null when no bake has it.</param>
/// <param name="Reading">What came of reading the journal.</param>
internal sealed record BakesSoFar(Bake? Last, string? NextId, SourceLine? HolderOfId, JournalReading Reading)
{
    /// <summary>Reads the journal once through.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="files">Its files.</param>
    /// <param name="wantedId">A name to look for; null for none.</param>
    public static BakesSoFar Read(string path, IReadOnlyList<string> files, string? wantedId = null)
    {
        var series = new BakeIdSeries();
        SourceLine? holder = null;
        RowValues? last = null;
        var stream = BakeStream.Read(path, files, textsOf: int.MaxValue, row =>
        {
            last = row.Copy();
            var id = row.Texts[BakeColumns.Id.Index]!;
            if (id != BakeStream.FallbackId(row))
            {
                series.Add(id);
            }

            holder ??= id == wantedId ? new SourceLine(row.File, row.Line) : null;
        });
        return new(last is null ? null : new Bake(last), series.Next, holder, stream.Reading);
    }
}
