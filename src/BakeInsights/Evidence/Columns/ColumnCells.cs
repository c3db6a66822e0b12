using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What the bakes say in one column of the journal, or in a measure, whichever has the name.</summary>
/// <param name="Name">The column's name.</param>
/// <param name="Title">The name for people.</param>
/// <param name="Dimension">What its numbers measure; a plain number where the toolkit doesn't know the column.</param>
/// <param name="Text">A bake's cell; null where it has none.</param>
/// <param name="Number">A bake's number; null where it has none, or the cell is no number.</param>
internal sealed record ColumnCells(
    string Name, string Title, Dimension Dimension, Func<Bake, string?> Text, Func<Bake, double?> Number)
{
    /// <summary>Finds the column among measures, columns that the toolkit knows, and the journal's own.</summary>
    public static ColumnCells Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        var wanted = name.Trim();
        if (Measures.All.FirstOrDefault(measure => IsNamed(measure.Name, wanted)) is { } measure)
        {
            return OfNumbers(measure.Name, measure.Words, measure.Dimension, measure.Of);
        }

        return BakeColumns.All.FirstOrDefault(column => IsNamed(column.Name, wanted)) switch
        {
            QuantityColumn quantity => OfNumbers(quantity.Name, Spaced(quantity.Stem), quantity.Dimension, bake => bake[quantity]),
            ChoiceColumn choice => OfTexts(choice.Name, bake => bake[choice]),
            TextColumn text => OfTexts(text.Name, bake => bake[text]),
            DayColumn day => OfTexts(day.Name, bake => bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            _ => OfTexts(wanted, bake => OwnCell(bake, wanted)),
        };
    }

    /// <summary>Whether a name is neither a measure's nor that of a column which the toolkit knows.</summary>
    public static bool IsOwn(string name) =>
        !Measures.All.Any(measure => IsNamed(measure.Name, name)) && !BakeColumns.All.Any(column => IsNamed(column.Name, name));

    /// <summary>The column, or the problem that no bake has anything in it.</summary>
    public static Attempt<ColumnCells> In(IReadOnlyList<Bake> bakes, string name)
    {
        var cells = Named(name);
        if (bakes.Any(bake => cells.Text(bake) is not null))
        {
            return cells;
        }

        var own = bakes.SelectMany(bake => bake.OwnColumns.Keys).Distinct().Order(StringComparer.Ordinal).ToList();
        return new FitProblem(
            FitProblemKind.MissingValue,
            [cells.Name],
            $"No bake has anything in a column {cells.Name}.",
            own.Count == 0
                ? $"Log {cells.Name} of each bake, or name a column that the journal has."
                : $"Log {cells.Name} of each bake, or name a column that the journal has; its own are {string.Join(", ", own)}.");
    }

    private static ColumnCells OfNumbers(string name, string title, Dimension dimension, Func<Bake, double?> of) =>
        new(name, title, dimension, bake => of(bake)?.ToString("R", CultureInfo.InvariantCulture), of);

    private static ColumnCells OfTexts(string name, Func<Bake, string?> of) =>
        new(name, Spaced(name), Dimension.Number, of, bake => of(bake) is { } text ? NumberOf(text) : null);

    // A number with or without a sign; "2,5" is one too, and "1,250" can't be read in one way only.
    private static double? NumberOf(string text)
    {
        var isBelow = text is ['-' or '−', ..];
        var digits = isBelow || text is ['+', ..] ? text.AsSpan(1) : text.AsSpan();
        return NumberText.TryParse(digits, DecimalMark.NotShown, out var value) ? (isBelow ? -value : value) : null;
    }

    private static string? OwnCell(Bake bake, string name) =>
        bake.Row.OwnColumns.FirstOrDefault(cell => IsNamed(cell.Key, name)).Value;

    private static bool IsNamed(string name, string wanted) => name.Equals(wanted, StringComparison.OrdinalIgnoreCase);

    private static string Spaced(string name) => name.Replace('_', ' ');
}
