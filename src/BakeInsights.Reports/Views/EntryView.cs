using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>A bake that is about to be added: what its file gets, and what the reader makes of that.</summary>
public static class EntryView
{
    private const int SecondsInMinute = 60;

    /// <summary>A row for each field that is filled in, and the reader's remarks.</summary>
    /// <param name="entry">The bake.</param>
    /// <param name="reading">What the reader makes of it.</param>
    /// <param name="units">The units that people read.</param>
    public static View Of(BakeEntry entry, BakeEntryReading reading, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(reading);
        var rows = entry.Form.Fields
            .Where(field => entry[field].Length > 0 || field.Column == BakeColumns.Id)
            .Select(field => (IReadOnlyList<string>)[field.Name, Written(entry, field, reading.Bake), Understood(field, reading.Bake, units)]);
        var table = new ViewTable(
            $"A bake for {Path.GetFileName(entry.Form.File)}, as it will be written and as it is understood:",
            [new ViewColumn("Field", false), new ViewColumn("Written", false), new ViewColumn("Understood", false)],
            [.. rows]);
        return reading.Notices.Count == 0
            ? new View([table])
            : new View([table, new ViewList([.. reading.Notices.Select(Remark)])]);
    }

    /// <summary>A remark on a cell, in one sentence or two.</summary>
    public static string Remark(Notice notice)
    {
        ArgumentNullException.ThrowIfNull(notice);
        var place = notice.Column.Length == 0 ? "" : notice.Text.Length == 0 ? $"{notice.Column}: " : $"{notice.Column}, '{notice.Text}': ";
        return $"{place}{notice.Message} {notice.Remedy}";
    }

    /// <summary>What a bake has in a field, with its unit; a dash where it has nothing.</summary>
    public static string Understood(BakeField field, Bake? bake, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(field);
        return (bake is null ? null : TextOf(field, bake, units)) ?? "–";
    }

    // A bake that is given no name gets one where the journal numbers its bakes.
    private static string Written(BakeEntry entry, BakeField field, Bake? bake) =>
        entry[field].Length == 0 && entry.Form.NextId is not null ? bake?.Id ?? "" : entry[field];

    private static string? TextOf(BakeField field, Bake bake, UnitSystem units) => field.Column switch
    {
        QuantityColumn column => bake[column] is { } value ? Quantity(column.Dimension, value, units) : null,
        ChoiceColumn column => bake[column],
        TextColumn column => bake[column],
        DayColumn => bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => bake.OwnColumns.GetValueOrDefault(field.Name),
    };

    private static string Quantity(Dimension dimension, double value, UnitSystem units)
    {
        if (dimension == Dimension.TimeOfDay)
        {
            var time = TimeOnly.MinValue.Add(TimeSpan.FromSeconds(Math.Round(value * SecondsInMinute)));
            return time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);
        }

        // As fine as kitchen scales go: here a slip is looked for, and 0.4 oz of yeast are not 0.
        var unit = DisplayUnit.For(dimension, units);
        var number = Math.Round(unit.Value(value), 2).ToString("0.##", CultureInfo.InvariantCulture);
        return $"{number} {unit.Label}".TrimEnd();
    }
}
