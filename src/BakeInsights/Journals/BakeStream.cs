using System.Globalization;
using System.Text;

namespace BakeInsights;

/// <summary>Reads the bakes of a journal one after the other, at constant memory however many there are.</summary>
internal sealed class BakeStream
{
    private readonly RowValues _row = new(BakeColumns.Layout);
    private readonly BakeIds _ids = new();
    private readonly CupWeights _cups = new();
    private readonly ClockSpans _spans;
    private readonly bool _keepsTexts;

    private BakeStream(bool keepsTexts, TimeZoneInfo? zone)
    {
        _keepsTexts = keepsTexts;
        _spans = new ClockSpans(zone);
    }

    /// <summary>The remarks so far.</summary>
    public NoticeLog Notices { get; } = new();

    /// <summary>Rows read so far.</summary>
    public int Rows { get; private set; }

    /// <summary>The files read so far.</summary>
    public List<JournalFile> Files { get; } = [];

    /// <summary>Reads all files of a journal; each bake is shown to <paramref name="take"/>, and is gone after it.</summary>
    /// <param name="path">A folder or a file.</param>
    /// <param name="keepsTexts">Whether the bakes need their texts.</param>
    /// <param name="zone">Whose clocks the times of day are from; null for clocks that are never changed.</param>
    /// <param name="take">Takes the row; whoever keeps it keeps a copy.</param>
    public static BakeStream Read(string path, bool keepsTexts, TimeZoneInfo? zone, Action<RowValues> take)
    {
        var stream = new BakeStream(keepsTexts, zone);
        foreach (var file in JournalFiles.Find(path))
        {
            stream.ReadFile(file, take);
        }

        return stream;
    }

    private void ReadFile(string file, Action<RowValues> take)
    {
        using var table = CsvTable.Open(file, BakeColumns.Layout, Notices);
        var rows = new RowReader(table.Bindings, new CellReader(table.Conventions), _keepsTexts);
        var days = new DayReader(table.Conventions);
        var day = table.Bindings.First(binding => binding.Column == BakeColumns.BakedOn);
        var id = table.Bindings.FirstOrDefault(binding => binding.Column == BakeColumns.Id);
        var yeast = YeastWithoutKind(table.Bindings);
        var kept = 0;
        _row.File = table.Name;
        while (table.Next())
        {
            _row.Clear();
            _row.Line = table.Line;
            if (!ReadDay(table, day, days) || !ReadId(table, id))
            {
                continue;
            }

            rows.Read(table.Csv, _row, _cups, Notices);
            _spans.Fill(_row, Notices);
            _row.Texts[BakeColumns.Id.Index] ??= FallbackId();
            if (yeast is not null && !double.IsNaN(_row.Quantities[BakeColumns.Yeast.Index]) && _row.Choices[BakeColumns.YeastKind.Index] < 0)
            {
                Notices.Add(BakeInsights.Notices.YeastKindMissing(Here, yeast.Header, RowReader.Text(table.Csv, yeast)));
            }

            kept++;
            take(_row);
        }

        Files.Add(new JournalFile(table.Name, JournalFileKind.Bakes, table.Rows, kept));
        Rows += table.Rows;
    }

    private SourceLine Here => new(_row.File, _row.Line);

    // Without a column for the kind the header has had its notice already; one for each row would drown the others.
    private static ColumnBinding? YeastWithoutKind(IReadOnlyList<ColumnBinding> bindings) =>
        bindings.Any(binding => binding.Column == BakeColumns.YeastKind)
            ? bindings.FirstOrDefault(binding => binding.Column == BakeColumns.Yeast)
            : null;

    private bool ReadDay(CsvTable table, ColumnBinding binding, DayReader days)
    {
        var bytes = RowReader.Bytes(table.Csv, binding);
        if (DayText.TryIso(bytes, out var day))
        {
            _row.Day = day;
            return true;
        }

        var text = RowReader.Text(table.Csv, binding);
        if (text.Length > 0)
        {
            return days.Read(binding, text, _row, Notices);
        }

        if (table.Csv.Current.ToArray().All(string.IsNullOrWhiteSpace))
        {
            Notices.Add(BakeInsights.Notices.RowEmpty(Here, table.RowText));
        }
        else
        {
            Notices.Add(BakeInsights.Notices.DateMissing(Here));
        }

        return false;
    }

    private bool ReadId(CsvTable table, ColumnBinding? binding)
    {
        var bytes = (binding is null ? default : RowReader.Bytes(table.Csv, binding)).Trim(" \t"u8);
        if (bytes.IsEmpty)
        {
            bytes = Encoding.UTF8.GetBytes(FallbackId());
        }

        if (_ids.FindOrAdd(bytes, _row.File, _row.Line) is not { } first)
        {
            return true;
        }

        Notices.Add(BakeInsights.Notices.IdTwice(Here, Encoding.UTF8.GetString(bytes), first));
        return false;
    }

    private string FallbackId() =>
        string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(_row.File)}:{_row.Line}");
}
