using System.Collections.Immutable;
using C = BakeInsights.ScoreColumns;

namespace BakeInsights;

/// <summary>One judge's score of one attribute of a loaf.</summary>
/// <param name="BakeId">The bake.</param>
/// <param name="Loaf">Its loaf; null where the score is of the whole bake.</param>
/// <param name="Judge">Who judged, or null.</param>
/// <param name="Attribute">What was judged.</param>
/// <param name="Value">The score, on the scale of the attribute.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record Score(
    string BakeId,
    string? Loaf,
    string? Judge,
    string Attribute,
    double Value,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static Score From(RowValues row) => new(
        row.Of(C.BakeId)!,
        row.Of(C.Loaf),
        row.Of(C.Judge),
        row.Of(C.Attribute)!,
        row.Of(C.Value)!.Value,
        row.Origin,
        row.OwnCells());
}
