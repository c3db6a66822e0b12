using System.Globalization;
using System.Text;

namespace BakeInsights;

/// <summary>Reads the bakes of a journal one after the other, at constant memory however many there are.</summary>
internal sealed class BakeStream
{
    private readonly RowValues _row = new(BakeColumns.Layout);
    private readonly BakeIds _ids = new();
    private readonly CupWeights _cups = new([]);
    private readonly NoticeLog _notices = new();
    private readonly string _name;
    private readonly bool _keepsTexts;
    private readonly int _named;
    private int _rows;
    private int _kept;

    private BakeStream(string path, bool keepsTexts, int named)
    {
        _named = named;
        _name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
        _keepsTexts = keepsTexts;
    }

    /// <summary>What came of the reading.</summary>
    public JournalReading Reading => new(_name, _rows, _kept, _notices.Notices, _notices.Counts);

    /// <summary>Reads all files of a journal; each bake is shown to <paramref name="take"/>, and is gone after it.</summary>
    /// <param name="path">A folder or a file.</param>
    /// <param name="keepsTexts">Whether the bakes need their texts.</param>
    /// <param name="take">Takes the row; whoever keeps it keeps a copy.</param>
    /// <param name="named">How many of the first bakes need their names all the same.</param>
    public static BakeStream Read(string path, bool keepsTexts, Action<RowValues> take, int named = int.MaxValue)
    {
        var stream = new BakeStream(path, keepsTexts, named);
        foreach (var file in JournalFiles.Find(path))
        {
            stream.ReadFile(file, take);
        }

        return stream;
    }

    private void ReadFile(string file, Action<RowValues> take)
    {
        using var table = CsvTable.Open(file, BakeColumns.Layout, _notices);
        _cups.Remark(table.Bindings, new SourceLine(table.Name, table.Line), _notices);
        var rows = new RowReader(table.Bindings, new CellReader(), _keepsTexts, _cups.AsksForBaker);
        var plausibility = new Plausibility(table.Bindings, table.Csv, _notices);
        var day = table.Bindings.First(binding => binding.Column == BakeColumns.BakedOn);
        var id = table.Bindings.FirstOrDefault(binding => binding.Column == BakeColumns.Id);
        var yeast = YeastWithoutKind(table.Bindings);
        _row.File = table.Name;
        while (table.Next())
        {
            _row.Clear();
            _row.Line = table.Line;
            if (!ReadDay(table, day) || !ReadId(table, id))
            {
                continue;
            }

            rows.Read(table.Csv, _row, _cups, _notices);
            if (_kept < _named)
            {
                _row.Texts[BakeColumns.Id.Index] ??= NameOf(table, id);
            }

            if (yeast is not null && !double.IsNaN(_row.Quantities[BakeColumns.Yeast.Index]) && _row.Choices[BakeColumns.YeastKind.Index] < 0)
            {
                _notices.Add(Notices.YeastKindMissing(Here, yeast.Header, RowReader.Text(table.Csv, yeast)));
            }

            _cups.Note(_row);
            plausibility.Check(_row);
            _kept++;
            take(_row);
        }

        _rows += table.Rows;
    }

    private SourceLine Here => new(_row.File, _row.Line);

    // Without a column for the kind the header has had its notice already; one for each row would drown the others.
    private static ColumnBinding? YeastWithoutKind(IReadOnlyList<ColumnBinding> bindings) =>
        bindings.Any(binding => binding.Column == BakeColumns.YeastKind)
            ? bindings.FirstOrDefault(binding => binding.Column == BakeColumns.Yeast)
            : null;

    private bool ReadDay(CsvTable table, ColumnBinding binding)
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
            _notices.Add(Notices.DateUnread(Here, text));
        }
        else if (table.Csv.Current.ToArray() is var cells && cells.All(string.IsNullOrWhiteSpace))
        {
            _notices.Add(Notices.RowEmpty(Here, string.Join(',', cells)));
        }
        else
        {
            _notices.Add(Notices.DateMissing(Here));
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

        _notices.Add(Notices.IdTwice(Here, Encoding.UTF8.GetString(bytes), first));
        return false;
    }

    // A reading that keeps no texts still needs names for the bakes that it may keep.
    private string NameOf(CsvTable table, ColumnBinding? binding) =>
        binding is not null && RowReader.Text(table.Csv, binding) is { Length: > 0 } text ? text : FallbackId();

    private string FallbackId() =>
        string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(_row.File)}:{_row.Line}");
}
