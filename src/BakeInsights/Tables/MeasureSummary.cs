using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A measure over several bakes, in the measure's canonical unit.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Count">How many of the bakes have it, at least one.</param>
/// <param name="Least">The smallest value.</param>
/// <param name="LowerQuarter">A quarter of the values lie below.</param>
/// <param name="Middle">The median.</param>
/// <param name="UpperQuarter">A quarter of the values lie above.</param>
/// <param name="Most">The largest value.</param>
public sealed record MeasureSummary(
    Measure Measure, int Count, double Least, double LowerQuarter, double Middle, double UpperQuarter, double Most)
{
    /// <summary>The summary of a measure, or null when no bake has it.</summary>
    public static MeasureSummary? Of(Measure measure, IEnumerable<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(bakes);
        var values = bakes.Select(measure.Of).OfType<double>().ToList();
        return values.Count == 0
            ? null
            : new(
                measure,
                values.Count,
                values.Min(),
                Quantiles.Of(values, 0.25),
                Quantiles.Median(values),
                Quantiles.Of(values, 0.75),
                values.Max());
    }
}
