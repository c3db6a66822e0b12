using CsvHelper;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>A cell as it is written.</summary>
internal readonly record struct WrittenCell(SourceLine At, ColumnBinding Binding, string Text)
{
    public string Header => Binding.Header;
}

/// <summary>Makes the notices about the values of a row, in the words of its file.</summary>
internal sealed class RowRemarks
{
    private readonly ColumnBinding?[] _bindings = new ColumnBinding?[C.Layout.QuantityCount];
    private readonly CsvReader _csv;
    private readonly NoticeLog _notices;

    public RowRemarks(IReadOnlyList<ColumnBinding> bindings, CsvReader csv, NoticeLog notices)
    {
        _csv = csv;
        _notices = notices;
        foreach (var binding in bindings)
        {
            if (binding.Column is QuantityColumn column)
            {
                _bindings[column.Index] = binding;
            }
        }
    }

    /// <summary>The cell that a value was read from.</summary>
    public WrittenCell Cell(RowValues row, QuantityColumn column)
    {
        var binding = _bindings[column.Index] ?? new ColumnBinding(int.MaxValue, column.Name, column, null);
        return new(new SourceLine(row.File, row.Line), binding, RowReader.Text(_csv, binding));
    }

    public void Add(Notice notice) => _notices.Add(notice);

    /// <summary>Empties a cell of the row, and says why.</summary>
    public void Refuse(RowValues row, QuantityColumn column, Notice notice)
    {
        row.Quantities[column.Index] = double.NaN;
        _notices.Add(notice);
    }

    /// <summary>Holds a number against its range; an impossible one empties the cell that stands for it.</summary>
    public void Check(RowValues row, RatioRange range, double value)
    {
        if (value < range.UsualLow || value > range.UsualHigh)
        {
            Outside(row, range, value);
        }
    }

    private void Outside(RowValues row, RatioRange range, double value)
    {
        // Nothing of it is a choice, not a slip: a dough without salt, or without baker's yeast.
        var isPossible = value >= range.Low && value <= range.High;
        if (isPossible && value == 0)
        {
            return;
        }

        var cell = Cell(row, range.Column);
        if (isPossible)
        {
            Add(Notices.RatioUnusual(cell.At, cell.Header, cell.Text, range, value));
            return;
        }

        Refuse(row, range.Column, DecimalSlip.Of(value, range.UsualLow, range.UsualHigh) is { } slip
            ? Notices.RatioSlip(cell.At, cell.Header, cell.Text, range, value, value * slip)
            : Notices.RatioImpossible(cell.At, cell.Header, cell.Text, range, value));
    }
}
