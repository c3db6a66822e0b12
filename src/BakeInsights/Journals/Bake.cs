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

    /// <summary>
    /// The standard deviation of the flour that really went in about what <see cref="BakeColumns.Flour"/> says, as a
    /// share of it: 0 when it was weighed, about 0.04 to 0.09 by the cup.
    /// </summary>
    /// <remarks>
    /// Shared² + own² / cups (see <see cref="CupSpread"/>), from the journal's own weighed cups or else as published.
    /// The error is of the Berkson kind: the flour written down is fixed, the flour in the bowl scatters about it. One
    /// error moves all percentages of a bake together; <see cref="Measure.SensitivityToFlour"/> says how far each.
    /// Cups are counted as US customary ones, whichever were used; flour that was turned into grams before it was
    /// written down counts as cups too, as long as <see cref="FlourMeasure"/> still says so.
    /// </remarks>
    public double FlourRelativeSd => FlourByCup && this[BakeColumns.Flour] is { } grams && FlourCup is { Spread: { } spread } cup
        ? spread.RelativeSd(grams / cup.GramsPerCup)
        : 0;

    /// <summary>A quantity in its canonical unit, or null.</summary>
    public double? this[QuantityColumn column] => Row.Of(column);

    /// <summary>A word of a choice column, or null.</summary>
    public string? this[ChoiceColumn column] => Row.Of(column) is { } index ? column.Values[index] : null;

    /// <summary>A text, or null.</summary>
    public string? this[TextColumn column] => Row.Of(column);

    /// <summary>The row that the bake is; nobody changes it any more.</summary>
    internal RowValues Row { get; }

    private HouseholdWeight? FlourCup => Row.FlourCup ?? HouseholdWeights.OfFlour(FlourMeasure!.Value);
}
