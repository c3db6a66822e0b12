namespace BakeInsights;

/// <summary>Measures that the catalogue lacks: a number straight from a column of the journal.</summary>
public static class ColumnMeasure
{
    /// <summary>
    /// The number that each bake has in a column, the journal's own ones included, such as a height or a score that the
    /// baker gives. A cell that is no plain number counts as missing.
    /// </summary>
    /// <param name="column">The column's name; letter case doesn't matter.</param>
    /// <param name="title">The name for people; null for the column's own.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public static Measure Of(string column, string? title = null) => Of(ColumnCells.Named(column), title);

    internal static Measure Of(ColumnCells cells, string? title = null) =>
        Measures.All.FirstOrDefault(measure => measure.Name == cells.Name)
        ?? new Measure(cells.Name, title ?? cells.Title, cells.Dimension, cells.Name, "as logged", cells.Number);
}
