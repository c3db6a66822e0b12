namespace BakeInsights;

/// <summary>All columns of <c>cups.csv</c>: a row is one weighed cup. The same cup may be weighed again.</summary>
/// <remarks>The ranges are what can be meant at all; common practice of the trade, no source.</remarks>
public static class CupColumns
{
    private const double HeaviestG = 1_000;

    private static readonly TableLayout.Builder Columns = new("weighed cups");

    /// <summary>Who filled the cup.</summary>
    public static TextColumn Measurer { get; } = Columns.Text("measurer", "who filled the cup");

    /// <summary>What was in it.</summary>
    public static TextColumn Ingredient { get; } = Columns.Text("ingredient", "what was in it: flour, water, salt, sugar");

    /// <summary>How it was filled.</summary>
    public static ChoiceColumn Method { get; } =
        Columns.Choice("method", "how the cup was filled", [.. BakeColumns.FlourMeasure.Values.Skip(1)]);

    /// <summary>Which cup.</summary>
    public static TextColumn Cup { get; } = Columns.Text("cup", "which cup it was");

    /// <summary>What one cup weighed.</summary>
    public static QuantityColumn Mass { get; } =
        Columns.Quantity("mass", Dimension.Mass, "what the cup of it weighed", 0.1, HeaviestG);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [Ingredient, Mass], key: []);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
