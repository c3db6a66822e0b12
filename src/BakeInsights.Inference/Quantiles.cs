using MathNet.Numerics.Statistics;

namespace BakeInsights.Inference;

/// <summary>Quantiles of a sample.</summary>
/// <remarks>
/// Between two ordered values the quantile is interpolated at 1 + (n - 1) x share: definition 7 of Hyndman and Fan
/// (1996), Sample quantiles in statistical packages, The American Statistician 50, 361-365.
/// </remarks>
public static class Quantiles
{
    /// <summary>The value below which this share of the sample lies; a share of 0.5 gives the median.</summary>
    /// <param name="values">The sample, in any order, at least one value.</param>
    /// <param name="share">From 0, the smallest value, to 1, the largest.</param>
    /// <exception cref="ArgumentException">The sample is empty, holds a NaN, or the share is outside 0 to 1.</exception>
    public static double Of(IEnumerable<double> values, double share)
    {
        ArgumentNullException.ThrowIfNull(values);
        double[] ordered = [.. values];
        Array.Sort(ordered);
        return OfOrdered(ordered, share);
    }

    /// <summary>The same of a sample that is already in ascending order.</summary>
    /// <param name="ordered">The sample, the smallest value first.</param>
    /// <param name="share">From 0, the smallest value, to 1, the largest.</param>
    /// <exception cref="ArgumentException">The sample is empty, holds a NaN, or the share is outside 0 to 1.</exception>
    public static double OfOrdered(double[] ordered, double share)
    {
        ArgumentNullException.ThrowIfNull(ordered);
        if (ordered.Length == 0 || double.IsNaN(ordered[0]))
        {
            throw new ArgumentException("A quantile needs at least one value, and no NaN among them.", nameof(ordered));
        }

        if (!(share >= 0 && share <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "A share goes from 0 to 1.");
        }

        return SortedArrayStatistics.QuantileCustom(ordered, share, QuantileDefinition.R7);
    }

    /// <summary>The middle of the sample.</summary>
    /// <inheritdoc cref="Of"/>
    public static double Median(IEnumerable<double> values) => Of(values, 0.5);
}
