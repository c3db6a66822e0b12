namespace BakeInsights;

/// <summary>All columns of <c>scores.csv</c>: a row is one judge's score of one loaf.</summary>
/// <remarks>The ranges are what can be meant at all; common practice of the trade, no source.</remarks>
public static class ScoreColumns
{
    private static readonly TableLayout.Builder Columns = new("scores");

    /// <summary>The bake it belongs to.</summary>
    public static TextColumn BakeId { get; } = Columns.Text("bake_id", "the bake it belongs to, as the file of bakes names it");

    /// <summary>Which loaf of the bake.</summary>
    public static TextColumn Loaf { get; } = Columns.Text("loaf", "number or name of the loaf; empty for the whole bake");

    /// <summary>Who judged.</summary>
    public static TextColumn Judge { get; } = Columns.Text("judge", "who judged");

    /// <summary>What was judged.</summary>
    public static TextColumn Attribute { get; } = Columns.Text("attribute", "what was judged, as attributes.csv names it");

    /// <summary>The score.</summary>
    public static QuantityColumn Value { get; } = Columns.Quantity(
        "score", Dimension.Number, "the score, on the scale of the attribute", AttributeColumns.Lowest, AttributeColumns.Highest);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [BakeId, Attribute, Value], key: [BakeId, Loaf, Judge, Attribute]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
