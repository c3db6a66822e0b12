using CsvHelper;

namespace BakeInsights;

/// <summary>One CSV file of a journal, opened, its header understood, to be read row by row.</summary>
internal sealed class CsvTable : IDisposable
{
    private readonly string _path;
    private readonly NoticeLog _notices;
    private CsvMalformedRecord? _malformed;

    private CsvTable(string path, FileForm form, NoticeLog notices)
    {
        _path = path;
        _notices = notices;
        Form = form;
        Name = Path.GetFileName(path);
        Csv = CsvReader.FromFile(path, form.Options(record => _malformed = record));
    }

    /// <summary>The file's name, without its folder.</summary>
    public string Name { get; }

    /// <summary>How the file is written.</summary>
    public FileForm Form { get; }

    /// <summary>What the file as a whole says of its numbers and days.</summary>
    public FileConventions Conventions => field ??= new FileConventions(this);

    /// <summary>The cells of the current row.</summary>
    public CsvReader Csv { get; }

    /// <summary>What the columns hold.</summary>
    public IReadOnlyList<ColumnBinding> Bindings { get; private set; } = [];

    /// <summary>Rows so far, the header not among them.</summary>
    public int Rows { get; private set; }

    /// <summary>The current row's cells as one text.</summary>
    public string RowText => string.Join(Form.Separator, Csv.Current.ToArray());

    /// <summary>The current row's line.</summary>
    public long Line => Csv.LineNumber;

    /// <summary>Opens a file that holds this kind of row.</summary>
    /// <exception cref="JournalFileException">The file can't be read as such a table.</exception>
    public static CsvTable Open(string path, TableLayout layout, NoticeLog notices)
    {
        var table = AtFirstRow(path, FileForm.Find(path, layout), notices);
        try
        {
            table.RequireHeader(layout);
            var at = new SourceLine(table.Name, table.Line);
            table.Bindings = HeaderReader.Read(table.Csv.Headers, layout, at, notices);
            if (!table.Form.IsPlain)
            {
                table.Conventions.Report(at, notices);
            }

            return table;
        }
        catch
        {
            table.Dispose();
            throw;
        }
    }

    /// <summary>The same table again from its first row; remarks on the rows are dropped.</summary>
    public CsvTable FromStart()
    {
        var again = AtFirstRow(_path, Form, new NoticeLog());
        again.Bindings = Bindings;
        return again;
    }

    /// <summary>Goes to the next row that can be taken apart into cells; one that can't leaves a notice.</summary>
    /// <exception cref="JournalFileException">The file can't be read any further, or became shorter meanwhile.</exception>
    public bool Next()
    {
        try
        {
            while (Csv.Read())
            {
                Rows++;
                if (IsWhole())
                {
                    return true;
                }
            }
        }
        catch (Exception failure) when (JournalFiles.Explain(_path, failure) is { } explained)
        {
            throw explained;
        }

        return new FileInfo(_path) is { Exists: true } file && file.Length < Form.Bytes
            ? throw JournalFiles.Shortened(_path)
            : false;
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
            _notices.Add(Notices.CellsTooMany(new SourceLine(Name, Line), string.Join(Form.Separator, beyond), Csv.FieldCount, Csv.Headers.Count));
        }

        return true;
    }

    private static CsvTable AtFirstRow(string path, FileForm form, NoticeLog notices)
    {
        CsvTable? table = null;
        try
        {
            table = new CsvTable(path, form, notices);
            table.Csv.ReadHeader();
            if (form.HasSeparatorLine && table.Csv.Read())
            {
                table.Csv.ReadHeader();
            }

            return table;
        }
        catch (Exception failure)
        {
            table?.Dispose();
            throw JournalFiles.Explain(path, failure) ?? failure;
        }
    }

    private void RequireHeader(TableLayout layout)
    {
        if (layout.Required.FirstOrDefault(column => !HeaderReader.Names(Csv.Headers, layout, column)) is { } missing)
        {
            throw JournalFiles.WithoutHeader(_path, layout, missing);
        }
    }
}
