using System.Globalization;
using CsvHelper;

namespace BakeInsights;

/// <summary>Writes bakes as CSV in canonical columns and units: numbers with a point, days as 2026-10-31.</summary>
public static class CanonicalCsv
{
    /// <summary>
    /// Writes a header and a row for each bake. Columns that no bake has anything in are left out, all but the name
    /// and the day; the journal's own columns come last.
    /// </summary>
    public static void Write(TextWriter writer, IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(bakes);
        var known = BakeColumns.All.Where(column => IsNeeded(column, bakes)).ToList();
        var own = bakes.SelectMany(bake => bake.OwnColumns.Keys).Distinct().Order(StringComparer.Ordinal).ToList();
        using var csv = CsvWriter.Create(writer, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        csv.WriteRecord([.. known.Select(column => column.Name), .. own]);
        foreach (var bake in bakes)
        {
            var kept = own.Select(name => bake.OwnColumns.GetValueOrDefault(name, ""));
            csv.WriteRecord([.. known.Select(column => Cell(column, bake)), .. kept]);
        }
    }

    private static bool IsNeeded(JournalColumn column, IReadOnlyList<Bake> bakes) =>
        column == BakeColumns.Id || column == BakeColumns.BakedOn || bakes.Any(bake => Cell(column, bake).Length > 0);

    private static string Cell(JournalColumn column, Bake bake) => column switch
    {
        QuantityColumn { Dimension: Dimension.TimeOfDay } time => bake[time] is { } minutes ? ClockText.Of(minutes) : "",
        QuantityColumn quantity => bake[quantity]?.ToString("R", CultureInfo.InvariantCulture) ?? "",
        ChoiceColumn choice => bake[choice] ?? "",
        DayColumn => bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        TextColumn text => bake[text] ?? "",
        _ => throw new InvalidOperationException($"{column} is a kind of column that can't be written."),
    };
}
