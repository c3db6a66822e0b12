using System.Collections.Immutable;
using C = BakeInsights.LoafColumns;

namespace BakeInsights;

/// <summary>One loaf of a bake. What was not logged is null.</summary>
/// <param name="BakeId">The bake it is of.</param>
/// <param name="Name">Its number or name, once in the bake.</param>
/// <param name="PieceG">The piece of dough, in g.</param>
/// <param name="LoafG">The cooled loaf, in g.</param>
/// <param name="VolumeMl">Its volume, in mL.</param>
/// <param name="HeightMm">Its height, in mm.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record Loaf(
    string BakeId,
    string Name,
    double? PieceG,
    double? LoafG,
    double? VolumeMl,
    double? HeightMm,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static Loaf From(RowValues row) => new(
        row.Of(C.BakeId)!,
        row.Of(C.Name)!,
        row.Of(C.Piece),
        row.Of(C.Mass),
        row.Of(C.Volume),
        row.Of(C.Height),
        row.Origin,
        row.OwnCells());
}
