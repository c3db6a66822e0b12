using System.Globalization;
using System.Text;

namespace BakeInsights;

/// <summary>Reads the bakes of a journal one after the other, at constant memory however many there are.</summary>
internal sealed class BakeStream
{
    private readonly RowValues _row = new(BakeColumns.Layout);
    private readonly BakeIds _ids = new();
    private readonly CupWeights _cups;
    private readonly NoticeLog _notices = new();
    private readonly List<JournalFile> _files = [];
    private readonly ClockSpans _spans;
    private readonly string _name;
    private readonly int _textsOf;
    private int _rows;
    private int _kept;
    private bool _isIdsNoted;

    private BakeStream(string path, int textsOf, TimeZoneInfo? zone)
    {
        _spans = new ClockSpans(zone);
        _cups = new CupWeights(SideFiles.CupWeighings(path));
        _textsOf = textsOf;
        _name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
    }

    /// <summary>What came of the reading.</summary>
    public JournalReading Reading => new(_name, _rows, _kept, _notices.Notices, _notices.Counts);

    /// <summary>Takes further remarks on the journal.</summary>
    public NoticeLog Log => _notices;

    /// <summary>The files of bakes, in the order in which they were read.</summary>
    public IReadOnlyList<JournalFile> Files => _files;

    /// <summary>The line of the last row, kept or not, in its file.</summary>
    public long LastLine => _row.Line;

    /// <summary>Reads all files of a journal; each bake is shown to <paramref name="take"/>, and is gone after it.</summary>
    /// <param name="path">A folder or a file.</param>
    /// <param name="textsOf">How many of the first bakes need their texts.</param>
    /// <param name="take">Takes the row; whoever keeps it keeps a copy.</param>
    /// <param name="zone">Whose clocks the times of day are from; null for clocks that are never changed.</param>
    public static BakeStream Read(
        string path, int textsOf, Action<RowValues> take, TimeZoneInfo? zone = null) =>
        Read(path, JournalFiles.Find(path), textsOf, take, zone);

    /// <summary>Reads these files as those of a journal.</summary>
    public static BakeStream Read(
        string path,
        IReadOnlyList<string> files,
        int textsOf,
        Action<RowValues> take,
        TimeZoneInfo? zone = null)
    {
        var stream = new BakeStream(path, textsOf, zone);
        foreach (var file in files)
        {
            stream.ReadFile(file, take);
        }

        return stream;
    }

    private void ReadFile(string file, Action<RowValues> take)
    {
        using var table = CsvTable.Open(file, BakeColumns.Layout, _notices);
        _cups.Remark(table.Bindings, new SourceLine(table.Name, table.Line), _notices);
        var rows = new RowReader(table.Bindings, new CellReader(table.Conventions), _cups.AsksForBaker);
        var plausibility = new Plausibility(table.Bindings, table.Csv, _notices);
        var days = new DayReader(table.Conventions);
        var day = table.Bindings.First(binding => binding.Column == BakeColumns.BakedOn);
        var id = table.Bindings.FirstOrDefault(binding => binding.Column == BakeColumns.Id);
        var yeast = YeastWithoutKind(table.Bindings);
        var before = _kept;
        _row.File = table.Name;
        while (table.Next())
        {
            _row.Clear();
            _row.Line = table.Line;
            _row.WantsTexts = _kept < _textsOf;
            if (!ReadDay(table, day, days) || !ReadId(table, id))
            {
                continue;
            }

            rows.Read(table.Csv, _row, _cups, _notices);
            _spans.Fill(_row, _notices);
            if (_row.WantsTexts)
            {
                _row.Texts[BakeColumns.Id.Index] ??= FallbackId();
            }

            if (yeast is not null && !double.IsNaN(_row.Quantities[BakeColumns.Yeast.Index]) && _row.Choices[BakeColumns.YeastKind.Index] < 0)
            {
                _notices.Add(Notices.YeastKindMissing(Here, yeast.Header, RowReader.Text(table.Csv, yeast)));
            }

            _cups.Note(_row);
            plausibility.Check(_row);
            take(_row);
            if (++_kept > JournalReader.KeptBakes)
            {
                _notices.KeepFirstOfEachCode();
            }
        }

        _files.Add(new JournalFile(table.Name, JournalFileKind.Bakes, table.Rows, _kept - before));
        _rows += table.Rows;
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
            return days.Read(binding, text, _row, _notices);
        }

        if (table.Csv.Current.ToArray().All(string.IsNullOrWhiteSpace))
        {
            _notices.Add(Notices.RowEmpty(Here, table.RowText));
        }
        else
        {
            _notices.Add(Notices.DateMissing(Here));
        }

        return false;
    }

    private bool ReadId(CsvTable table, ColumnBinding? binding)
    {
        var bytes = binding is null ? default : RowReader.Bytes(table.Csv, binding);
        if (!IsPlain(bytes))
        {
            var text = binding is null ? "" : CellText.Unmarked(RowReader.Text(table.Csv, binding));
            bytes = Encoding.UTF8.GetBytes(text.Length > 0 ? text : FallbackId());
        }

        if (!_isIdsNoted && !_ids.AreAllRemembered)
        {
            _isIdsNoted = true;
            _notices.Add(Notices.IdNeighboursOnly(Here, Encoding.UTF8.GetString(bytes)));
        }

        if (_ids.FindOrAdd(bytes, _row.File, _row.Line) is not { } first)
        {
            return true;
        }

        _notices.Add(Notices.IdTwice(Here, Encoding.UTF8.GetString(bytes), first));
        return false;
    }

    // Letters, digits and signs of ASCII are the name as they stand. Two cells of other bytes may come to one text.
    private static bool IsPlain(ReadOnlySpan<byte> bytes) =>
        !bytes.IsEmpty && bytes[0] != '\'' && !bytes.ContainsAnyExceptInRange((byte)'!', (byte)'~');

    private string FallbackId() => FallbackId(_row);

    /// <summary>What a bake is called that was given no name.</summary>
    internal static string FallbackId(RowValues row) =>
        string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(row.File)}:{row.Line}");
}
