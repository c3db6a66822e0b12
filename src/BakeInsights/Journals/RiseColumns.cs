namespace BakeInsights;

/// <summary>All columns of <c>rise.csv</c>: a row is one reading of a rising dough.</summary>
/// <remarks>
/// The ranges are what can be meant at all: times and temperatures as in <see cref="BakeColumns"/>, the rest common
/// practice of the trade, no source.
/// </remarks>
public static class RiseColumns
{
    private const double LongestMin = 5_760; // four days of retarding
    private const double HighestMm = 1_000;
    private const double LargestMl = 100_000;

    private static readonly TableLayout.Builder Columns = new("rise readings");

    /// <summary>The bake it belongs to.</summary>
    public static TextColumn BakeId { get; } = Columns.Text("bake_id", "the bake it belongs to, as the file of bakes names it");

    /// <summary>Which rise.</summary>
    public static ChoiceColumn Stage { get; } = Columns.Choice("stage", "which rise", "preferment", "rise", "proof");

    /// <summary>When it was read.</summary>
    public static QuantityColumn Minutes { get; } =
        Columns.NamedForUnit("minutes", Dimension.Duration, "time since the stage began", 0, LongestMin);

    /// <summary>Height of the dough.</summary>
    public static QuantityColumn Height { get; } = Columns.Quantity("height", Dimension.Length, "height of the dough", 1, HighestMm);

    /// <summary>Volume of the dough.</summary>
    public static QuantityColumn Volume { get; } = Columns.Quantity("volume", Dimension.Volume, "volume of the dough", 1, LargestMl);

    /// <summary>Temperature of the dough.</summary>
    public static QuantityColumn DoughTemp { get; } =
        Columns.Quantity("dough_temp", Dimension.Temperature, "temperature of the dough", 0, 50);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [BakeId, Minutes], key: [BakeId, Stage, Minutes]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
