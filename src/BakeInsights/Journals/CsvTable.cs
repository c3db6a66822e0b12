using CsvHelper;

namespace BakeInsights;

/// <summary>One CSV file of a journal, opened, its header understood, to be read row by row.</summary>
internal sealed class CsvTable : IDisposable
{
    // A line longer than this is no row of a journal, and reading on would fill the memory.
    private const int LongestLineBytes = 1 << 20;

    private static readonly char[] OtherSeparators = [';', '\t', '|'];

    private readonly string _path;
    private readonly NoticeLog _notices;
    private CsvMalformedRecord? _malformed;

    private CsvTable(string path, NoticeLog notices)
    {
        _path = path;
        _notices = notices;
        Name = Path.GetFileName(path);
        Csv = CsvReader.FromFile(path, new CsvReaderOptions
        {
            Separator = ',',
            DetectSeparatorHint = false,
            AllowLineBreaksInQuotes = false,
            TrackLineNumbers = true,
            MaxRecordSize = LongestLineBytes,
            OnMalformedRecord = record => _malformed = record,
        });
    }

    /// <summary>The file's name, without its folder.</summary>
    public string Name { get; }

    /// <summary>The cells of the current row.</summary>
    public CsvReader Csv { get; }

    /// <summary>What the columns hold.</summary>
    public IReadOnlyList<ColumnBinding> Bindings { get; private set; } = [];

    /// <summary>Rows so far, the header not among them.</summary>
    public int Rows { get; private set; }

    /// <summary>The current row's line.</summary>
    public long Line => Csv.LineNumber;

    /// <summary>Opens a file that holds this kind of row.</summary>
    /// <exception cref="JournalFileException">The file can't be read as such a table.</exception>
    public static CsvTable Open(string path, TableLayout layout, NoticeLog notices)
    {
        JournalFiles.RequireText(path);
        var table = new CsvTable(path, notices);
        try
        {
            table.Guarded(table.Csv.ReadHeader);
            table.RequireHeader(layout);
            table.Bindings = HeaderReader.Read(table.Csv.Headers, layout, new SourceLine(table.Name, table.Line), notices);
            return table;
        }
        catch
        {
            table.Dispose();
            throw;
        }
    }

    /// <summary>Goes to the next row that can be taken apart into cells; one that can't leaves a notice.</summary>
    public bool Next()
    {
        while (Guarded(Csv.Read))
        {
            Rows++;
            if (IsWhole())
            {
                return true;
            }
        }

        return false;
    }

    /// <inheritdoc/>
    public void Dispose() => Csv.Dispose();

    private bool IsWhole()
    {
        if (_malformed is { } malformed && malformed.LineNumber == Line)
        {
            _malformed = null;
            var at = new SourceLine(Name, Line);
            if (malformed.Reason is CsvMalformedReason.LineBreakInQuotes or CsvMalformedReason.UnterminatedQuote)
            {
                _notices.Add(Notices.QuoteUnclosed(at, malformed.RawRecord));
                return false;
            }

            _notices.Add(Notices.QuoteStray(at, malformed.RawRecord));
        }

        if (Csv.FieldCount > Csv.Headers.Count)
        {
            var beyond = Csv.Current.ToArray()[Csv.Headers.Count..];
            _notices.Add(Notices.CellsTooMany(new SourceLine(Name, Line), string.Join(',', beyond), Csv.FieldCount, Csv.Headers.Count));
        }

        return true;
    }

    private TResult Guarded<TResult>(Func<TResult> read)
    {
        try
        {
            return read();
        }
        catch (CsvFormatException failure)
        {
            throw new JournalFileException(
                _path, $"A line is longer than {LongestLineBytes / 1024} KiB.", "See that this is a journal of bakes.", failure);
        }
    }

    private void Guarded(Action read) => Guarded(() =>
    {
        read();
        return true;
    });

    private void RequireHeader(TableLayout layout)
    {
        if (layout.Required.All(column => HeaderReader.Names(Csv.Headers, layout, column)))
        {
            return;
        }

        if (Csv.Headers is [var only] && only.IndexOfAny(OtherSeparators) is var at && at >= 0)
        {
            var separator = only[at] == '\t' ? "a tab" : $"'{only[at]}'";
            throw new JournalFileException(
                _path, $"The cells are separated by {separator}, not by a comma.", "Save the table as CSV with commas.");
        }

        var missing = layout.Required.First(column => !HeaderReader.Names(Csv.Headers, layout, column));
        throw new JournalFileException(
            _path,
            $"The first line has no column {missing}, so it is not the header of a table of {layout.Name}.",
            "Start the file with a line of column names; 'bakeinsights new' writes one to copy.");
    }
}
