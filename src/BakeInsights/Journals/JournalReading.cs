namespace BakeInsights;

/// <summary>What came of reading a journal, without the bakes themselves.</summary>
/// <param name="Name">The name of the folder or file.</param>
/// <param name="Rows">Rows read, headers left out; always <c>Bakes + SetAside</c>.</param>
/// <param name="Bakes">How many bakes were kept.</param>
/// <param name="Notices">
/// The remarks, in the order of the files and their lines: all of them up to 50,000, past that the first twenty of
/// each code.
/// </param>
/// <param name="NoticeCounts">How many remarks of each code there were.</param>
public sealed record JournalReading(
    string Name, int Rows, int Bakes, IReadOnlyList<Notice> Notices, IReadOnlyDictionary<string, int> NoticeCounts)
{
    /// <summary>Rows that no bake came of; each had a notice of gravity <see cref="Gravity.Refused"/>.</summary>
    public int SetAside => Rows - Bakes;

    /// <summary>
    /// Reads a journal and keeps no bake, at the same memory however long it is; with <paramref name="canonical"/>
    /// the bakes are written there on the way.
    /// </summary>
    /// <param name="path">A folder with <c>bakes*.csv</c> in it, or one CSV file.</param>
    /// <param name="canonical">Takes the bakes in canonical columns and units; null when they aren't wanted.</param>
    /// <param name="hidesNames">Whether bakers and judges are replaced by labels (<see cref="HiddenNames"/>).</param>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static JournalReading Of(string path, TextWriter? canonical = null, bool hidesNames = false)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var used = canonical is null ? null : new UsedColumns();
        var names = hidesNames ? new NameCollector() : null;
        var kept = new KeptRows();
        var textsOf = used is null && names is null ? JournalReader.KeptBakes + 1 : int.MaxValue;
        var stream = BakeStream.Read(path, textsOf, row =>
        {
            used?.Add(row);
            names?.Add(row);
            kept.Add(row);
        });
        if (kept.All is { } rows)
        {
            return Finish(JournalReader.Assemble(path, rows, stream), canonical, hidesNames);
        }

        SideFiles.PassOver(path, stream.Log);
        return Finish(path, stream.Reading, canonical, used, names?.Finish());
    }

    private static JournalReading Finish(Journal journal, TextWriter? canonical, bool hidesNames)
    {
        var shown = hidesNames ? HiddenNames.Of(journal).In(journal) : journal;
        if (canonical is not null)
        {
            CanonicalCsv.Write(canonical, shown.Bakes);
        }

        return shown.Reading;
    }

    // A journal too long to keep is read twice: any row may name a baker whom only a later one makes known, and which
    // columns are in use is known at the end.
    private static JournalReading Finish(
        string path, JournalReading reading, TextWriter? canonical, UsedColumns? used, HiddenNames? hidden)
    {
        if (canonical is not null)
        {
            using var csv = new CanonicalCsvWriter(canonical, hidden is null ? used! : used!.Renamed(hidden.In));
            BakeStream.Read(path, textsOf: int.MaxValue, row => csv.Write(hidden?.In(row) ?? row));
        }

        return hidden?.In(reading) ?? reading;
    }
}
