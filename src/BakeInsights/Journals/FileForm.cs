using System.Text;
using CsvHelper;

namespace BakeInsights;

/// <summary>How a file is written: its encoding and what stands between its cells.</summary>
/// <param name="Encoding">The encoding; null for UTF-8.</param>
/// <param name="Separator">What stands between the cells.</param>
/// <param name="HasSeparatorLine">Whether a line such as <c>sep=;</c> comes before the header.</param>
/// <param name="HasQuotes">Whether cells may be quoted, and so hold the separator.</param>
/// <param name="Bytes">The file's length when it was looked at.</param>
internal sealed record FileForm(Encoding? Encoding, char Separator, bool HasSeparatorLine, bool HasQuotes, long Bytes)
{
    /// <summary>A line longer than this is no row of a journal, and reading on would fill the memory.</summary>
    public const int LongestLineBytes = 1 << 20;

    private const string Separators = ",;\t|";

    /// <summary>UTF-8 and commas.</summary>
    public bool IsPlain => Encoding is null && Separator == ',';

    /// <summary>Whether a cell may hold a comma at all.</summary>
    public bool CanHoldCommas => Separator != ',' || HasQuotes;

    /// <summary>Looks at a whole file. The separator is the one under which the header names most columns of the layout.</summary>
    /// <exception cref="JournalFileException">The file can't be read as text.</exception>
    public static FileForm Find(string path, TableLayout layout)
    {
        using var stream = JournalFiles.Open(path);
        try
        {
            var (encoding, hasQuotes) = FileEncoding.Of(path, stream);
            var form = new FileForm(encoding, ',', false, hasQuotes, stream.Length);
            return form.WithSeparator(path, layout);
        }
        catch (Exception failure) when (JournalFiles.Explain(path, failure) is { } explained)
        {
            throw explained;
        }
    }

    /// <summary>How a file of this form is taken apart.</summary>
    public CsvReaderOptions Options(Action<CsvMalformedRecord>? onMalformed = null) => new()
    {
        Encoding = Encoding,
        Separator = Separator,
        DetectSeparatorHint = false,
        AllowLineBreaksInQuotes = false,
        TrackLineNumbers = true,
        MaxRecordSize = LongestLineBytes,
        OnMalformedRecord = onMalformed,
    };

    private FileForm WithSeparator(string path, TableLayout layout)
    {
        using var csv = CsvReader.FromFile(path, Options() with { HasHeader = false });
        if (!csv.Read())
        {
            return this;
        }

        var header = csv.RawRecord.ToArray();
        var isHint = IsSeparatorLine(Encoding.UTF8.GetString(header), out var hinted);
        if (isHint && csv.Read())
        {
            header = csv.RawRecord.ToArray();
        }

        var separator = hinted ?? Separators.MaxBy(each => HeaderReader.Known(Cells(header, each), layout));
        return this with { Separator = separator, HasSeparatorLine = isHint };
    }

    // What spreadsheets write before the header to tell one another the separator.
    private static bool IsSeparatorLine(string line, out char? separator)
    {
        var text = line.Trim('"');
        var isLine = text.Length == "sep=;".Length && text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase);
        separator = isLine && Separators.Contains(text[^1]) ? text[^1] : null;
        return isLine;
    }

    private List<string> Cells(byte[] line, char separator)
    {
        var options = (this with { Separator = separator, Encoding = null }).Options() with { HasHeader = false };
        using var csv = CsvReader.Create(line, options);
        return csv.Read() ? [.. csv.Current.ToArray()] : [];
    }
}
