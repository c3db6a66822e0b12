using System.Collections.Immutable;
using C = BakeInsights.RiseColumns;

namespace BakeInsights;

/// <summary>One reading of a rising dough: its height, its volume or its temperature, or several of them.</summary>
/// <param name="BakeId">The bake.</param>
/// <param name="Stage">Which rise; null where it was not written.</param>
/// <param name="Minutes">Minutes since the stage began.</param>
/// <param name="HeightMm">Height in mm.</param>
/// <param name="VolumeMl">Volume in mL.</param>
/// <param name="DoughTempC">Temperature of the dough in °C.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record RiseReading(
    string BakeId,
    RiseStage? Stage,
    double Minutes,
    double? HeightMm,
    double? VolumeMl,
    double? DoughTempC,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static RiseReading From(RowValues row) => new(
        row.Of(C.BakeId)!,
        (RiseStage?)row.Of(C.Stage),
        row.Of(C.Minutes)!.Value,
        row.Of(C.Height),
        row.Of(C.Volume),
        row.Of(C.DoughTemp),
        row.Origin,
        row.OwnCells());
}
