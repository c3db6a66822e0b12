using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>What is shown of a bake beside the pointer.</summary>
internal static class HoverWords
{
    /// <summary>The bake's name and day, and some of its measures as they were logged.</summary>
    public static string Of(Bake bake, Figures figures, params IEnumerable<Measure> measures) => Traces.Words(
    [
        $"{bake.Id}, {bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}",
        .. measures.Where(measure => measure.Of(bake) is not null)
            .Select(measure => $"{measure.Title}: {figures.WithUnit(measure.Dimension, measure.Of(bake)!.Value)}"),
    ]);
}
