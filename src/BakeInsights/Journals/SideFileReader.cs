namespace BakeInsights;

/// <summary>Reads one file of a journal that is not of bakes, row by row.</summary>
internal sealed class SideFileReader
{
    // No column of these files is an ingredient, so none is measured by the cup.
    private static readonly CupWeights NoCups = new([]);

    private readonly string _folder;
    private readonly IReadOnlySet<string> _bakes;
    private readonly NoticeLog _notices;
    private readonly List<JournalFile> _files = [];

    /// <summary>Makes a reader of the files in a folder.</summary>
    /// <param name="folder">The journal's folder.</param>
    /// <param name="bakes">The names of the bakes that were kept.</param>
    /// <param name="notices">Takes the remarks.</param>
    public SideFileReader(string folder, IReadOnlySet<string> bakes, NoticeLog notices)
    {
        _folder = folder;
        _bakes = bakes;
        _notices = notices;
    }

    /// <summary>The files read so far.</summary>
    public IReadOnlyList<JournalFile> Files => _files;

    /// <summary>What the file of a kind is called.</summary>
    public static string NameOf(JournalFileKind kind) => kind.ToString().ToLowerInvariant() + ".csv";

    /// <summary>
    /// The rows of a file that can be used; none where the folder has no such file, or one that can't be read at all; those before the
    /// place where a file can't be read any further.
    /// </summary>
    /// <param name="kind">Which file: its name is that of the kind.</param>
    /// <param name="layout">Its columns.</param>
    /// <param name="make">Makes a record of a row.</param>
    /// <param name="objection">What else may be wrong with a row: a remark that refuses it, or null.</param>
    public IReadOnlyList<TRecord> Read<TRecord>(
        JournalFileKind kind, TableLayout layout, Func<RowValues, TRecord> make, Func<RowValues, Notice?>? objection = null)
    {
        var path = Path.Combine(_folder, NameOf(kind));
        var records = new List<TRecord>();
        if (!File.Exists(path))
        {
            return records;
        }

        CsvTable? table = null;
        try
        {
            table = CsvTable.Open(path, layout, _notices);
            Read(table, layout, objection, row => records.Add(make(row)));
        }
        catch (JournalFileException failure)
        {
            _notices.Add(Notices.FileUnread(Path.GetFileName(path), failure));
        }
        finally
        {
            table?.Dispose();
        }

        _files.Add(new JournalFile(Path.GetFileName(path), kind, table?.Rows ?? 0, records.Count));
        return records;
    }

    private void Read(CsvTable table, TableLayout layout, Func<RowValues, Notice?>? objection, Action<RowValues> take)
    {
        var checks = new SideRowChecks(table, layout, _bakes, _notices);
        var reader = new RowReader(table.Bindings, new CellReader(table.Conventions));
        var row = new RowValues(layout) { File = table.Name };
        while (table.Next())
        {
            row.Clear();
            row.Line = table.Line;
            if (checks.IsEmpty(row))
            {
                continue;
            }

            reader.Read(table.Csv, row, NoCups, _notices);
            if (checks.Admits(row, objection))
            {
                take(row);
            }
        }
    }
}
