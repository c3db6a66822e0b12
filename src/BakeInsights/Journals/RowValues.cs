using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>
/// What one row says, at the places that its layout gives. Mutable, so that a million rows can go through one of
/// these; whoever keeps a row keeps a copy.
/// </summary>
internal sealed class RowValues
{
    private static readonly Dictionary<string, string> NoColumns = [];

    private readonly TableLayout _layout;

    // Most journals have none, and a dictionary for each of fifty thousand rows would outweigh the rows.
    private SortedDictionary<string, string>? _ownColumns;

    public RowValues(TableLayout layout)
    {
        _layout = layout;
        Quantities = new double[layout.QuantityCount];
        Choices = new int[layout.ChoiceCount];
        Texts = new string?[layout.TextCount];
        Clear();
    }

    /// <summary>Quantities in canonical units; NaN where missing.</summary>
    public double[] Quantities { get; }

    /// <summary>The place of each choice among its column's words; -1 where missing.</summary>
    public int[] Choices { get; }

    /// <summary>Texts; null where missing.</summary>
    public string?[] Texts { get; }

    /// <summary>Cells of columns that the layout does not have, by the header's name.</summary>
    public IReadOnlyDictionary<string, string> OwnColumns => _ownColumns is null ? NoColumns : _ownColumns;

    /// <summary>Whether the reader is to fill in texts; a reading that only counts and sums does without.</summary>
    public bool WantsTexts { get; set; } = true;

    /// <summary>What a cup of the row's flour weighed, where the journal's own cups say so; null otherwise.</summary>
    public HouseholdWeight? FlourCup { get; set; }

    /// <summary>The day of the row, where its layout has one.</summary>
    public DateOnly Day { get; set; }

    /// <summary>The file's name, without its folder.</summary>
    public string File { get; set; } = "";

    /// <summary>The line of the file, counted from 1.</summary>
    public long Line { get; set; }

    /// <summary>Where the row stands.</summary>
    public SourceLine Origin => new(File, Line);

    /// <summary>A quantity, or null.</summary>
    public double? Of(QuantityColumn column) => Quantities[column.Index] is var value && double.IsNaN(value) ? null : value;

    /// <summary>The place of a choice among its column's words, or null.</summary>
    public int? Of(ChoiceColumn column) => Choices[column.Index] is var place && place < 0 ? null : place;

    /// <summary>A text, or null.</summary>
    public string? Of(TextColumn column) => Texts[column.Index];

    /// <summary>The cells of other columns, in a form that does not change.</summary>
    public ImmutableSortedDictionary<string, string> OwnCells() => OwnColumns.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Forgets the row.</summary>
    public void Clear()
    {
        Array.Fill(Quantities, double.NaN);
        Array.Fill(Choices, -1);
        Array.Clear(Texts);
        _ownColumns?.Clear();
        FlourCup = null;
    }

    /// <summary>Keeps a cell of a column that the layout does not have.</summary>
    public void Keep(string column, string text) => (_ownColumns ??= new(StringComparer.Ordinal))[column] = text;

    /// <summary>Drops a cell that was kept.</summary>
    public void Forget(string column) => _ownColumns?.Remove(column);

    /// <summary>A copy that later rows don't reach.</summary>
    public RowValues Copy()
    {
        var copy = new RowValues(_layout);
        CopyTo(copy);
        return copy;
    }

    /// <summary>Makes another row of the same layout say what this one says.</summary>
    public void CopyTo(RowValues other)
    {
        Quantities.CopyTo(other.Quantities, 0);
        Choices.CopyTo(other.Choices, 0);
        Texts.CopyTo(other.Texts, 0);
        (other.Day, other.File, other.Line, other.FlourCup) = (Day, File, Line, FlourCup);
        other._ownColumns = _ownColumns is { Count: > 0 } ? new(_ownColumns, StringComparer.Ordinal) : null;
    }
}
