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
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static JournalReading Of(string path, TextWriter? canonical = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var used = canonical is null ? null : new UsedColumns();
        var reading = BakeStream.Read(path, keepsTexts: used is not null, row => used?.Add(row), named: 0).Reading;
        if (canonical is not null)
        {
            using var csv = new CanonicalCsvWriter(canonical, used!);
            BakeStream.Read(path, keepsTexts: true, csv.Write);
        }

        return reading;
    }
}
