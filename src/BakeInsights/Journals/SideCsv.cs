using System.Globalization;
using CsvHelper;

namespace BakeInsights;

/// <summary>
/// Writes the files that lie beside the bakes as CSV in canonical columns and units. Columns that no row has anything in
/// are left out, all but those that the file can't do without; so are columns of the journal's own.
/// </summary>
public static class SideCsv
{
    /// <summary><c>loaves.csv</c> of these loaves.</summary>
    public static string Of(IReadOnlyList<Loaf> loaves) => Text(LoafColumns.Layout, loaves, loaf =>
        [loaf.BakeId, loaf.Name, loaf.PieceG, loaf.LoafG, loaf.VolumeMl, loaf.HeightMm]);

    /// <summary><c>scores.csv</c> of these scores.</summary>
    public static string Of(IReadOnlyList<Score> scores) => Text(ScoreColumns.Layout, scores, score =>
        [score.BakeId, score.Loaf, score.Judge, score.Attribute, score.Value]);

    /// <summary><c>attributes.csv</c> of these attributes.</summary>
    public static string Of(IReadOnlyList<ScoredAttribute> attributes) => Text(AttributeColumns.Layout, attributes, attribute =>
        [attribute.Name, attribute.Low, attribute.High, attribute.Kind is { } kind ? AttributeColumns.Kind.Values[(int)kind] : null]);

    /// <summary><c>rise.csv</c> of these readings.</summary>
    public static string Of(IReadOnlyList<RiseReading> readings) => Text(RiseColumns.Layout, readings, reading =>
        [reading.BakeId, reading.Stage is { } stage ? RiseColumns.Stage.Values[(int)stage] : null, reading.Minutes, reading.HeightMm, reading.VolumeMl, reading.DoughTempC]);

    /// <summary><c>cups.csv</c> of these weighed cups.</summary>
    public static string Of(IReadOnlyList<WeighedCup> cups) => Text(CupColumns.Layout, cups, cup =>
        [cup.Measurer, cup.Ingredient, cup.Method is { } method ? BakeColumns.FlourMeasure.Values[(int)method] : null, cup.Cup, cup.MassG]);

    private static string Text<TRow>(TableLayout layout, IReadOnlyList<TRow> rows, Func<TRow, object?[]> cells)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var table = rows.Select(cells).ToList();
        var used = layout.Columns.Select((column, place) =>
            layout.Required.Contains(column) || table.Any(row => row[place] is not null)).ToList();
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            csv.WriteRecord([.. layout.Columns.Where((_, place) => used[place]).Select(column => column.Name)]);
            foreach (var row in table)
            {
                foreach (var cell in row.Where((_, place) => used[place]))
                {
                    Write(csv, cell);
                }

                csv.EndRecord();
            }
        }

        return text.ToString();
    }

    private static void Write(CsvWriter csv, object? cell)
    {
        if (cell is double number)
        {
            csv.WriteField(number);
        }
        else
        {
            csv.WriteField(CellText.Marked((string?)cell ?? ""));
        }
    }
}
