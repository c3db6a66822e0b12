using CsvHelper;

namespace BakeInsights;

/// <summary>Reads the files of a journal one after the other.</summary>
internal sealed class JournalReader
{
    // A line longer than this is no row of a journal, and reading on would fill the memory.
    private const int LongestLineBytes = 1 << 20;

    private static readonly char[] OtherSeparators = [';', '\t', '|'];

    private readonly List<Bake> _bakes = [];
    private readonly List<Notice> _notices = [];
    private readonly Dictionary<string, SourceLine> _ids = new(StringComparer.Ordinal);
    private int _rows;

    /// <inheritdoc cref="Journal.Read"/>
    public static Journal Read(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var reader = new JournalReader();
        foreach (var file in JournalFiles.Find(path))
        {
            JournalFiles.RequireText(file);
            reader.ReadFile(file);
        }

        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
        return new Journal(name, reader._rows, reader._bakes, reader._notices);
    }

    private void ReadFile(string file)
    {
        CsvMalformedRecord? malformed = null;
        var options = new CsvReaderOptions
        {
            Separator = ',',
            DetectSeparatorHint = false,
            AllowLineBreaksInQuotes = false,
            TrackLineNumbers = true,
            MaxRecordSize = LongestLineBytes,
            OnMalformedRecord = record => malformed = record,
        };
        try
        {
            using var csv = CsvReader.FromFile(file, options);
            csv.ReadHeader();
            var name = Path.GetFileName(file);
            var headers = RequireHeader(file, [.. csv.Headers]);
            var rows = new RowReader(HeaderReader.Read(headers, new SourceLine(name, csv.LineNumber), _notices));
            while (csv.Read())
            {
                var at = new SourceLine(name, csv.LineNumber);
                ReadRow(rows, csv.Current.ToArray(), headers.Count, at, malformed?.LineNumber == at.Line ? malformed : null);
            }
        }
        catch (CsvFormatException failure)
        {
            throw new JournalFileException(
                file, $"A line is longer than {LongestLineBytes / 1024} KiB.", "See that this is a journal of bakes.", failure);
        }
    }

    private void ReadRow(RowReader rows, string[] cells, int columns, SourceLine at, CsvMalformedRecord? malformed)
    {
        _rows++;
        if (malformed is { Reason: CsvMalformedReason.LineBreakInQuotes or CsvMalformedReason.UnterminatedQuote } unclosed)
        {
            _notices.Add(Notices.QuoteUnclosed(at, unclosed.RawRecord));
            return;
        }

        if (malformed is { } stray)
        {
            _notices.Add(Notices.QuoteStray(at, stray.RawRecord));
        }

        if (cells.Length > columns)
        {
            _notices.Add(Notices.CellsTooMany(at, string.Join(',', cells[columns..]), cells.Length, columns));
        }

        var fallbackId = $"{Path.GetFileNameWithoutExtension(at.File)}:{at.Line}";
        if (rows.Read(cells, at, fallbackId, _notices) is not { } bake)
        {
            return;
        }

        if (_ids.TryGetValue(bake.Id, out var first))
        {
            _notices.Add(Notices.IdTwice(at, bake.Id, first));
            return;
        }

        _ids.Add(bake.Id, at);
        _bakes.Add(bake);
    }

    private static IReadOnlyList<string> RequireHeader(string file, IReadOnlyList<string> headers)
    {
        if (HeaderReader.HasDay(headers))
        {
            return headers;
        }

        if (headers is [var only] && only.IndexOfAny(OtherSeparators) is var at && at >= 0)
        {
            var separator = only[at] == '\t' ? "a tab" : $"'{only[at]}'";
            throw new JournalFileException(
                file, $"The cells are separated by {separator}, not by a comma.", "Save the table as CSV with commas.");
        }

        throw new JournalFileException(
            file,
            $"The first line has no column {BakeColumns.BakedOn.Name}, so it is not the header of a table of bakes.",
            "Start the file with a line of column names; 'bakeinsights new' writes one to copy.");
    }
}
