using System.Collections.Immutable;
using C = BakeInsights.ProbeColumns;

namespace BakeInsights;

/// <summary>One temperature reading of a bake.</summary>
/// <param name="BakeId">The bake.</param>
/// <param name="Minutes">Minutes since the probe was put in.</param>
/// <param name="Place">Where it was, or null.</param>
/// <param name="TempC">The temperature in °C.</param>
/// <param name="Origin">Where it was written down.</param>
/// <param name="OwnColumns">Cells of columns that the toolkit does not know, by the header's name for them.</param>
public sealed record TemperatureReading(
    string BakeId,
    double Minutes,
    string? Place,
    double TempC,
    SourceLine Origin,
    ImmutableSortedDictionary<string, string> OwnColumns)
{
    internal static TemperatureReading From(RowValues row) => new(
        row.Of(C.BakeId)!,
        row.Of(C.Minutes)!.Value,
        row.Of(C.Place),
        row.Of(C.Temp)!.Value,
        row.Origin,
        row.OwnCells());
}
