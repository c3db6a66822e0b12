namespace BakeInsights;

/// <summary>Reads the text of a cell that is not a plain number in its column's unit, or not a word as the column has it.</summary>
internal sealed class CellReader
{
    private readonly FileConventions _conventions;
    private bool? _isPointDecimal;

    /// <summary>Makes a reader of the cells of one file.</summary>
    public CellReader(FileConventions conventions) => _conventions = conventions;

    /// <summary>Whether the file lets a number such as 1.250 be read as it stands, one and a quarter.</summary>
    public bool IsPointDecimal => _isPointDecimal ??= _conventions.IsPointDecimal;

    /// <summary>The value in the column's canonical unit, or null with a remark.</summary>
    public double? Quantity(ColumnBinding binding, string text, RowValues row, CupWeights cups, NoticeLog notices)
    {
        var column = (QuantityColumn)binding.Column!;
        var at = new SourceLine(row.File, row.Line);
        var value = column.Dimension == Dimension.TimeOfDay
            ? TimeOfDay(binding, text, at, notices)
            : Quantity(column, binding, text, row, at, cups, notices);
        if (value is { } number && (number < column.Low || number > column.High))
        {
            notices.Add(OutOfRangeRemark.Of(at, binding, text, number));
            return null;
        }

        return value;
    }

    /// <summary>The place of a word among those of its column, or -1, with a remark when there was one.</summary>
    public static int Choice(ColumnBinding binding, ChoiceColumn column, string text, RowValues row, NoticeLog notices)
    {
        var place = text.Length == 0 ? -1 : column.IndexOf(text);
        if (place < 0 && text.Length > 0)
        {
            notices.Add(Notices.ChoiceUnknown(new SourceLine(row.File, row.Line), column, binding.Header, text));
        }

        return place;
    }

    private static double? TimeOfDay(ColumnBinding binding, string text, SourceLine at, NoticeLog notices)
    {
        if (ClockText.TryTimeOfDay(text, out var minutes))
        {
            return minutes;
        }

        notices.Add(Notices.TimeUnread(at, binding.Header, text));
        return null;
    }

    private double? Quantity(
        QuantityColumn column,
        ColumnBinding binding,
        string text,
        RowValues row,
        SourceLine at,
        CupWeights cups,
        NoticeLog notices)
    {
        if (!TryParse(text, binding, at, notices, out var quantity))
        {
            return null;
        }

        var unit = quantity.Unit ?? binding.Unit;
        if (unit is null)
        {
            if (MeasureUnits.Canonical(column.Dimension) is null)
            {
                return quantity.Value;
            }

            notices.Add(Notices.UnitMissing(at, binding.Header, text, column.Name));
            return null;
        }

        if (!column.CanBeIn(unit))
        {
            notices.Add(Notices.UnitWrong(at, binding.Header, text, unit.Symbol));
            return null;
        }

        if (unit.Dimension == column.Dimension)
        {
            return unit.ToCanonical(quantity.Value);
        }

        if (cups.Of(binding, text, row, notices) is { } cup)
        {
            return unit.ToCanonical(quantity.Value) / MeasureUnits.Cup.ToCanonical(1) * cup.GramsPerCup;
        }

        notices.Add(Notices.CupUnknown(at, binding.Header, text));
        return null;
    }

    private bool TryParse(string text, ColumnBinding binding, SourceLine at, NoticeLog notices, out QuantityText quantity)
    {
        if (text.Contains(',', StringComparison.Ordinal))
        {
            _conventions.Report(at, notices);
        }

        // Most texts can be read in one way only; the file as a whole is asked about the others.
        if (QuantityText.TryParse(text, DecimalMark.Both, out quantity)
            || (text.AsSpan().IndexOfAny(',', '.') >= 0 && QuantityText.TryParse(text, _conventions.DecimalMark, out quantity)))
        {
            return true;
        }

        notices.Add(
            QuantityText.TryParse(text, DecimalMark.Comma, out var comma) && QuantityText.TryParse(text, DecimalMark.Point, out var point)
                ? Notices.NumberEither(at, binding.Header, text, comma.Value, point.Value)
                : Notices.NumberUnread(at, binding.Header, text));
        return false;
    }
}
