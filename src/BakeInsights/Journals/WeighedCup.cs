using System.Collections.Immutable;
using C = BakeInsights.CupColumns;

namespace BakeInsights;

/// <summary>One cup of an ingredient that was filled and weighed.</summary>
/// <param name="Measurer">Who filled it, or null.</param>
/// <param name="Ingredient">What was in it.</param>
/// <param name="Method">How it was filled; null where it was not written.</param>
/// <param name="Cup">Which cup, or null.</param>
/// <param name="MassG">What it weighed, in g.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record WeighedCup(
    string? Measurer,
    string Ingredient,
    FlourMeasure? Method,
    string? Cup,
    double MassG,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    /// <summary>The weighing, brought to a US customary cup; a cup that is not said to be another is taken for one.</summary>
    internal CupWeighing Weighing => CupWeighing.In(
        Measurer ?? "",
        Ingredient,
        Method,
        Cup is not null && MeasureUnits.WithText(Cup) is { Dimension: Dimension.Volume } unit ? unit : MeasureUnits.Cup,
        MassG);

    // The words of the file leave out the first value of the enumeration: a weighed cup was not "weighed" instead.
    internal static WeighedCup From(RowValues row) => new(
        row.Of(C.Measurer),
        row.Of(C.Ingredient)!,
        (FlourMeasure?)(row.Of(C.Method) + 1),
        row.Of(C.Cup),
        row.Of(C.Mass)!.Value,
        row.Origin,
        row.OwnCells());
}
