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
        var used = new UsedColumns();
        foreach (var bake in bakes)
        {
            used.Add(bake.Row);
        }

        using var csv = new CanonicalCsvWriter(writer, used);
        foreach (var bake in bakes)
        {
            csv.Write(bake.Row);
        }
    }
}
