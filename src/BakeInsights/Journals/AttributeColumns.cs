namespace BakeInsights;

/// <summary>All columns of <c>attributes.csv</c>: a row is one attribute that judges score.</summary>
/// <remarks>The ranges are what can be meant at all; common practice of the trade, no source.</remarks>
public static class AttributeColumns
{
    internal const double Lowest = -1_000;
    internal const double Highest = 1_000;

    private static readonly TableLayout.Builder Columns = new("scored attributes");

    /// <summary>The attribute's name.</summary>
    public static TextColumn Name { get; } = Columns.Text("attribute", "name of the attribute, once in the file");

    /// <summary>The lower end of its scale.</summary>
    public static QuantityColumn Low { get; } = Columns.Quantity("low", Dimension.Number, "lowest score of the scale", Lowest, Highest);

    /// <summary>The upper end of its scale.</summary>
    public static QuantityColumn High { get; } = Columns.Quantity("high", Dimension.Number, "highest score of the scale", Lowest, Highest);

    /// <summary>Which score is best.</summary>
    public static ChoiceColumn Kind { get; } =
        Columns.Choice("kind", "which score is best", "more_is_better", "middle_is_best");

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [Name, Low, High], key: [Name]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
