using System.Text;

namespace BakeInsights;

/// <summary>
/// What the cells of a whole file show together: the decimal mark, and the order of day and month. The file is gone
/// through once, when the first cell needs it.
/// </summary>
internal sealed class FileConventions
{
    private readonly CsvTable _table;
    private (DecimalMark Mark, DayOrder Order)? _found;
    private bool _isReported;

    public FileConventions(CsvTable table) => _table = table;

    /// <summary>The decimal mark of the file's quantities.</summary>
    public DecimalMark DecimalMark => (_found ??= Find()).Mark;

    /// <summary>What comes first in days whose year comes last.</summary>
    public DayOrder DayOrder => (_found ??= Find()).Order;

    /// <summary>Whether a point is always before the parts. A file that can hold no comma is not gone through for it.</summary>
    public bool IsPointDecimal => !_table.Form.CanHoldCommas || DecimalMark is DecimalMark.NotShown or DecimalMark.Point;

    /// <summary>Says once, and only of a file that is not in the plain form, how it is written.</summary>
    public void Report(SourceLine at, NoticeLog notices)
    {
        if (!_isReported && (!_table.Form.IsPlain || !IsPointDecimal))
        {
            notices.Add(Notices.FileForm(at, _table.Form, DecimalMark));
            _isReported = true;
        }
    }

    private (DecimalMark Mark, DayOrder Order) Find()
    {
        using var table = _table.FromStart();
        var quantities = table.Bindings
            .Where(binding => binding.Column is QuantityColumn { Dimension: not Dimension.TimeOfDay }).ToList();
        var days = table.Bindings.Where(binding => binding.Column is DayColumn).ToList();
        var (hasPoint, hasComma, hasDayFirst, hasMonthFirst) = (false, false, false, false);
        while (table.Next())
        {
            foreach (var binding in quantities)
            {
                var bytes = RowReader.Bytes(table.Csv, binding);
                if (bytes.IndexOfAny((byte)'.', (byte)',') >= 0)
                {
                    var shown = QuantityText.Shown(Encoding.UTF8.GetString(bytes));
                    hasPoint |= shown == DecimalMark.Point;
                    hasComma |= shown == DecimalMark.Comma;
                }
            }

            foreach (var binding in days)
            {
                var bytes = RowReader.Bytes(table.Csv, binding);
                if (!DayText.TryIso(bytes, out _))
                {
                    var shown = WrittenDay.Parse(Encoding.UTF8.GetString(bytes)).Shown;
                    hasDayFirst |= shown == DayOrder.DayFirst;
                    hasMonthFirst |= shown == DayOrder.MonthFirst;
                }
            }
        }

        return (
            (hasPoint, hasComma) switch
            {
                (true, true) => DecimalMark.Both,
                (true, false) => DecimalMark.Point,
                (false, true) => DecimalMark.Comma,
                _ => DecimalMark.NotShown,
            },
            (hasDayFirst, hasMonthFirst) switch
            {
                (true, true) => DayOrder.Both,
                (true, false) => DayOrder.DayFirst,
                (false, true) => DayOrder.MonthFirst,
                _ => DayOrder.NotShown,
            });
    }
}
