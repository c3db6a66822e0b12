using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Times that are known only to lie between two looks.</summary>
internal static class Looks
{
    /// <summary>
    /// The middle between the last look that found a dough not ready and the first that did; the time itself where
    /// there was no look before. The later look alone would read a dough half a span late, a warm one as much as a cold
    /// one, which flattens slopes; what the middle costs is tabled with <see cref="CensoredLogNormal"/>.
    /// </summary>
    public static double? Middle(double? notReadyMin, double? readyMin) =>
        notReadyMin is { } early ? (early + readyMin) / 2 : readyMin;

    /// <summary>Whether a span is too wide for its middle to stand for it.</summary>
    public static bool IsWide(double? notReadyMin, double? readyMin) =>
        notReadyMin is { } early && readyMin is { } late && late - early > CensoredLogNormal.WidestMidpointSpan * (early + late) / 2;

    /// <summary>Bakes found ready at the first look, by the column of the last look before.</summary>
    public static Exclusion ReadyAtFirst(QuantityColumn notReady) =>
        new("ready at the first look, so that only the latest time is known", bake => bake[notReady] == 0);
}
