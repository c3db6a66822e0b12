using System.Globalization;

namespace BakeInsights;

/// <summary>Turns the text of a cell into a number in its column's canonical unit.</summary>
internal static class QuantityReader
{
    private static readonly string[] TimeFormats = ["H:mm", "HH:mm", "H:mm:ss", "HH:mm:ss"];

    /// <summary>
    /// The value, or null with a remark. Household measures are turned into grams by
    /// <paramref name="cup"/>, the weight of a cup of this ingredient.
    /// </summary>
    public static double? Read(
        ColumnBinding binding, string text, SourceLine at, HouseholdWeight? cup, ICollection<Notice> notices)
    {
        var column = (QuantityColumn)binding.Column!;
        var value = column.Dimension == Dimension.TimeOfDay
            ? TimeOfDay(binding, text, at, notices)
            : Quantity(column, binding, text, at, cup, notices);
        if (value is { } number && (number < column.Low || number > column.High))
        {
            notices.Add(Notices.OutOfRange(at, column, binding.Header, text, number));
            return null;
        }

        return value;
    }

    private static double? TimeOfDay(ColumnBinding binding, string text, SourceLine at, ICollection<Notice> notices)
    {
        if (TimeOnly.TryParseExact(text.Trim(), TimeFormats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
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
        SourceLine at,
        HouseholdWeight? cup,
        ICollection<Notice> notices)
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

        if (cup is null)
        {
            notices.Add(Notices.CupUnknown(at, binding.Header, text));
            return null;
        }

        return unit.ToCanonical(quantity.Value) / MeasureUnits.Cup.ToCanonical(1) * cup.GramsPerCup;
    }
}
