namespace BakeInsights;

/// <summary>
/// What one row says, at the places that its layout gives. Mutable, so that a million rows can go through one of
/// these; whoever keeps a row keeps a copy.
/// </summary>
internal sealed class RowValues
{
    private readonly TableLayout _layout;

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
    public SortedDictionary<string, string> OwnColumns { get; private init; } = new(StringComparer.Ordinal);

    /// <summary>What a cup of the row's flour weighed, where the journal's own cups say so; null otherwise.</summary>
    public HouseholdWeight? FlourCup { get; set; }

    /// <summary>The day of the row, where its layout has one.</summary>
    public DateOnly Day { get; set; }

    /// <summary>The file's name, without its folder.</summary>
    public string File { get; set; } = "";

    /// <summary>The line of the file, counted from 1.</summary>
    public long Line { get; set; }

    /// <summary>Forgets the row.</summary>
    public void Clear()
    {
        Array.Fill(Quantities, double.NaN);
        Array.Fill(Choices, -1);
        Array.Clear(Texts);
        OwnColumns.Clear();
        FlourCup = null;
    }

    /// <summary>A copy that later rows don't reach.</summary>
    public RowValues Copy()
    {
        var copy = new RowValues(_layout) { OwnColumns = new(OwnColumns, StringComparer.Ordinal), Day = Day, File = File, Line = Line };
        copy.FlourCup = FlourCup;
        Quantities.CopyTo(copy.Quantities, 0);
        Choices.CopyTo(copy.Choices, 0);
        Texts.CopyTo(copy.Texts, 0);
        return copy;
    }
}
