using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>One dough from mixing to cooling, as it was logged. Immutable; what was not logged is null.</summary>
/// <remarks>Quantities are in canonical units: g, mL, °C, min, percent, minutes after midnight.</remarks>
public sealed class Bake
{
    internal Bake(RowValues row) => Row = row;

    /// <summary>Where the bake was written down.</summary>
    public SourceLine Origin => new(Row.File, Row.Line);

    /// <summary>The bake's name, once in a journal.</summary>
    public string Id => this[BakeColumns.Id]!;

    /// <summary>The day of the bake.</summary>
    public DateOnly BakedOn => Row.Day;

    /// <summary>Cells of columns that the toolkit does not know, by the header's name for them.</summary>
    public ImmutableSortedDictionary<string, string> OwnColumns =>
        Row.OwnColumns.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>How the flour was measured.</summary>
    public FlourMeasure? FlourMeasure => (FlourMeasure?)ChoiceIndex(BakeColumns.FlourMeasure);

    /// <summary>The kind of yeast; null when it was not logged.</summary>
    public YeastKind? YeastKind => (YeastKind?)ChoiceIndex(BakeColumns.YeastKind);

    /// <summary>How the first rise ended.</summary>
    public RiseOutcome? RiseOutcome => (RiseOutcome?)ChoiceIndex(BakeColumns.RiseOutcome);

    /// <summary>What a dent in the dough did.</summary>
    public PressTest? PressTest => (PressTest?)ChoiceIndex(BakeColumns.PressTest);

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
    public double? this[QuantityColumn column]
    {
        get
        {
            var value = Row.Quantities[column.Index];
            return double.IsNaN(value) ? null : value;
        }
    }

    /// <summary>A word of a choice column, or null.</summary>
    public string? this[ChoiceColumn column] => ChoiceIndex(column) is { } index ? column.Values[index] : null;

    /// <summary>A text, or null.</summary>
    public string? this[TextColumn column] => Row.Texts[column.Index];

    /// <summary>The row that the bake is; nobody changes it any more.</summary>
    internal RowValues Row { get; }

    private HouseholdWeight? FlourCup => Row.FlourCup ?? HouseholdWeights.OfFlour(FlourMeasure!.Value);

    private int? ChoiceIndex(ChoiceColumn column) => Row.Choices[column.Index] is var index && index >= 0 ? index : null;
}
