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
        double[] values = [.. bakes.Select(measure.Of).Known()];
        Array.Sort(values);
        return values.Length == 0
            ? null
            : new(
                measure,
                values.Length,
                values[0],
                Quantiles.OfOrdered(values, 0.25),
                Quantiles.OfOrdered(values, 0.5),
                Quantiles.OfOrdered(values, 0.75),
                values[^1]);
    }
}
