namespace BakeInsights;

/// <summary>All columns of <c>loaves.csv</c>: a row is one loaf.</summary>
/// <remarks>The ranges are what can be meant at all; common practice of the trade, no source.</remarks>
public static class LoafColumns
{
    private const double HeaviestG = 100_000;
    private const double HighestMm = 1_000;

    private static readonly TableLayout.Builder Columns = new("loaves");

    /// <summary>The bake it belongs to.</summary>
    public static TextColumn BakeId { get; } = Columns.Text("bake_id", "the bake it belongs to, as the file of bakes names it");

    /// <summary>Which loaf of the bake.</summary>
    public static TextColumn Name { get; } = Columns.Text("loaf", "number or name of the loaf, once in its bake");

    /// <summary>The piece of dough.</summary>
    public static QuantityColumn Piece { get; } =
        Columns.Quantity("piece", Dimension.Mass, "the piece of dough that went to the oven", 1, HeaviestG);

    /// <summary>The cooled loaf.</summary>
    public static QuantityColumn Mass { get; } = Columns.Quantity("loaf", Dimension.Mass, "the cooled loaf", 1, HeaviestG);

    /// <summary>Its volume.</summary>
    public static QuantityColumn Volume { get; } =
        Columns.Quantity("loaf_volume", Dimension.Volume, "volume of the loaf", 1, HeaviestG);

    /// <summary>Its height.</summary>
    public static QuantityColumn Height { get; } =
        Columns.Quantity("loaf_height", Dimension.Length, "height of the loaf at its highest", 1, HighestMm);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [BakeId, Name], key: [BakeId, Name]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
