using System.Globalization;

namespace BakeInsights;

/// <summary>Reads the text of a cell that is not a plain number in its column's unit, or not a word as the column has it.</summary>
internal sealed class CellReader
{
    private static readonly string[] TimeFormats = ["H:mm", "HH:mm", "H:mm:ss", "HH:mm:ss"];

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
        if (TimeOnly.TryParseExact(text, TimeFormats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return time.ToTimeSpan().TotalMinutes;
        }

        notices.Add(Notices.TimeUnread(at, binding.Header, text));
        return null;
    }

    private static double? Quantity(
        QuantityColumn column,
        ColumnBinding binding,
        string text,
        RowValues row,
        SourceLine at,
        CupWeights cups,
        NoticeLog notices)
    {
        if (!QuantityText.TryParse(text, out var quantity))
        {
            notices.Add(Notices.NumberUnread(at, binding.Header, text));
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
}
