namespace BakeInsights;

/// <summary>All columns of <c>probe.csv</c>: a row is one temperature reading.</summary>
/// <remarks>
/// The ranges are what can be meant at all: from flour out of the freezer to the hottest oven of
/// <see cref="BakeColumns"/>; common practice of the trade, no source.
/// </remarks>
public static class ProbeColumns
{
    private const double LongestMin = 5_760; // four days of retarding

    private static readonly TableLayout.Builder Columns = new("probe readings");

    /// <summary>The bake it belongs to.</summary>
    public static TextColumn BakeId { get; } = Columns.Text("bake_id", "the bake it belongs to, as the file of bakes names it");

    /// <summary>When it was read.</summary>
    public static QuantityColumn Minutes { get; } =
        Columns.NamedForUnit("minutes", Dimension.Duration, "time since the probe was put in", 0, LongestMin);

    /// <summary>Where the probe was.</summary>
    public static TextColumn Place { get; } = Columns.Text("place", "where the probe was: crumb, dough, oven, room");

    /// <summary>The temperature.</summary>
    public static QuantityColumn Temp { get; } = Columns.Quantity("temp", Dimension.Temperature, "the temperature", -20, 350);

    /// <summary>The columns as a kind of file.</summary>
    internal static TableLayout Layout { get; } = Columns.Finish(required: [BakeId, Minutes, Temp], key: [BakeId, Minutes, Place]);

    /// <summary>All columns, in canonical order.</summary>
    public static IReadOnlyList<JournalColumn> All => Layout.Columns;
}
