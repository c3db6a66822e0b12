using System.Globalization;

namespace BakeInsights;

/// <summary>Whether a row of a file that is not of bakes has what it needs, a bake to belong to, and no copy above it.</summary>
internal sealed class SideRowChecks
{
    private const string BakeIdName = "bake_id";

    private readonly CsvTable _table;
    private readonly TableLayout _layout;
    private readonly TextColumn? _bakeId;
    private readonly IReadOnlySet<string> _bakes;
    private readonly NoticeLog _notices;
    private readonly List<JournalColumn> _key;
    private readonly Dictionary<string, long> _seen = new(StringComparer.Ordinal);

    public SideRowChecks(CsvTable table, TableLayout layout, IReadOnlySet<string> bakes, NoticeLog notices)
    {
        _table = table;
        _layout = layout;
        _bakes = bakes;
        _notices = notices;
        _bakeId = layout.Columns.OfType<TextColumn>().FirstOrDefault(column => column.Name == BakeIdName);

        // Without a column for judges there is one judge: what the file doesn't have doesn't tell rows apart.
        _key = [.. layout.Key.Where(column => table.Bindings.Any(binding => binding.Column == column))];
    }

    /// <summary>Whether there is nothing in the row; says so.</summary>
    public bool IsEmpty(RowValues row)
    {
        for (var i = 0; i < _table.Csv.FieldCount; i++)
        {
            if (!_table.Csv.GetSpan(i).Trim(" \t"u8).IsEmpty)
            {
                return false;
            }
        }

        _notices.Add(Notices.RowEmpty(row.Origin, _table.RowText));
        return true;
    }

    /// <summary>Whether the row can be used; what is against it is said.</summary>
    public bool Admits(RowValues row, Func<RowValues, Notice?>? objection)
    {
        if ((Lacking(row) ?? Orphan(row) ?? objection?.Invoke(row) ?? Copy(row)) is not { } notice)
        {
            return true;
        }

        _notices.Add(notice);
        return false;
    }

    private Notice? Lacking(RowValues row)
    {
        if (_layout.Required.FirstOrDefault(column => Text(row, column) is null) is not { } missing)
        {
            return null;
        }

        var binding = _table.Bindings.First(binding => binding.Column == missing);
        return Notices.CellNeeded(row.Origin, binding.Header, RowReader.Text(_table.Csv, binding));
    }

    private Notice? Orphan(RowValues row) => _bakeId is not null && row.Of(_bakeId) is { } id && !_bakes.Contains(id)
        ? Notices.BakeUnknown(row.Origin, id)
        : null;

    private Notice? Copy(RowValues row)
    {
        var cells = _key.Select(column => Text(row, column)).ToList();

        // A row that leaves open which it is may be another one.
        if (cells.Count == 0 || cells.Contains(null))
        {
            return null;
        }

        return _seen.TryAdd(string.Join('\u001F', cells), row.Line)
            ? null
            : Notices.RowTwice(row.Origin, string.Join(", ", cells), _key, _seen[string.Join('\u001F', cells)]);
    }

    private static string? Text(RowValues row, JournalColumn column) => column switch
    {
        QuantityColumn quantity => row.Of(quantity)?.ToString("R", CultureInfo.InvariantCulture),
        ChoiceColumn choice => row.Of(choice) is { } place ? choice.Values[place] : null,
        TextColumn text => row.Of(text),
        _ => throw new InvalidOperationException($"{column} is a kind of column that no such file has."),
    };
}
