using System.Collections.Immutable;
using C = BakeInsights.AttributeColumns;

namespace BakeInsights;

/// <summary>An attribute that judges score, and its scale.</summary>
/// <param name="Name">Its name, once in a journal.</param>
/// <param name="Low">The lowest score.</param>
/// <param name="High">The highest score, above the lowest.</param>
/// <param name="Kind">Which score is best; null where it was not written.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record ScoredAttribute(
    string Name,
    double Low,
    double High,
    AttributeKind? Kind,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static ScoredAttribute From(RowValues row) => new(
        row.Of(C.Name)!,
        row.Of(C.Low)!.Value,
        row.Of(C.High)!.Value,
        (AttributeKind?)row.Of(C.Kind),
        row.Origin,
        row.OwnCells());
}
