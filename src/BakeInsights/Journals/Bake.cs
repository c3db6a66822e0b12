using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>One dough from mixing to cooling, as it was logged. Immutable; what was not logged is null.</summary>
/// <remarks>Quantities are in canonical units: g, mL, °C, min, percent, minutes after midnight.</remarks>
public sealed class Bake
{
    internal Bake(RowValues row) => Row = row;

    /// <summary>Where the bake was written down.</summary>
    public SourceLine Origin => Row.Origin;

    /// <summary>The bake's name, once in a journal.</summary>
    public string Id => this[BakeColumns.Id]!;

    /// <summary>The day of the bake.</summary>
    public DateOnly BakedOn => Row.Day;

    /// <summary>Cells of columns that the toolkit does not know, by the header's name for them.</summary>
    public ImmutableSortedDictionary<string, string> OwnColumns => Row.OwnCells();

    /// <summary>How the flour was measured.</summary>
    public FlourMeasure? FlourMeasure => (FlourMeasure?)Row.Of(BakeColumns.FlourMeasure);

    /// <summary>The kind of yeast; null when it was not logged.</summary>
    public YeastKind? YeastKind => (YeastKind?)Row.Of(BakeColumns.YeastKind);

    /// <summary>How the first rise ended.</summary>
    public RiseOutcome? RiseOutcome => (RiseOutcome?)Row.Of(BakeColumns.RiseOutcome);

    /// <summary>What a dent in the dough did.</summary>
    public PressTest? PressTest => (PressTest?)Row.Of(BakeColumns.PressTest);

    /// <summary>Whether the flour was measured by the cup, in whatever way.</summary>
    public bool FlourByCup => FlourMeasure is not (null or BakeInsights.FlourMeasure.Weighed);

    /// <summary>A quantity in its canonical unit, or null.</summary>
    public double? this[QuantityColumn column] => Row.Of(column);

    /// <summary>A word of a choice column, or null.</summary>
    public string? this[ChoiceColumn column] => Row.Of(column) is { } index ? column.Values[index] : null;

    /// <summary>A text, or null.</summary>
    public string? this[TextColumn column] => Row.Of(column);

    /// <summary>The row that the bake is; nobody changes it any more.</summary>
    internal RowValues Row { get; }
}
