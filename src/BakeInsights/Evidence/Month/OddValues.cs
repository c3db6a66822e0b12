using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Finds the values that lie far from the rest.</summary>
internal static class OddValues
{
    // Iglewicz and Hoaglin (1993), How to Detect and Handle Outliers, ASQC: 0.6745 of the distance from the median over
    // the median distance, and 3.5 of those is far. It stands where one value out of reach would widen a standard
    // deviation until it hid itself.
    private const double PerMedianDistance = 0.6745;
    private const double Far = 3.5;

    // With fewer the middle itself is hardly known. Our own choice.
    private const int LeastValues = 5;

    /// <summary>Whether each value lies far from the median of all.</summary>
    public static bool[] Of(IReadOnlyList<double> values)
    {
        if (values.Count < LeastValues)
        {
            return new bool[values.Count];
        }

        var middle = Quantiles.Median(values);
        double[] distances = [.. values.Select(value => Math.Abs(value - middle))];
        var usual = Quantiles.Median(distances);
        return [.. distances.Select(distance => usual > 0 && PerMedianDistance * distance / usual > Far)];
    }

    /// <summary>The bakes whose value does.</summary>
    public static IReadOnlyList<OddBake> Of(IReadOnlyList<Bake> bakes, IReadOnlyList<double> values, string what)
    {
        var odd = Of(values);
        return [.. bakes.Where((_, place) => odd[place]).Select(bake => new OddBake(bake, what))];
    }
}
