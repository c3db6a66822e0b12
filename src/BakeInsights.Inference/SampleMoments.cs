namespace BakeInsights.Inference;

/// <summary>Mean, spread and serial correlation of a sample, summed in doubled precision.</summary>
/// <param name="Count">The number of values.</param>
/// <param name="Mean">The arithmetic mean.</param>
/// <param name="StandardDeviation">With divisor count less 1; null for a single value.</param>
/// <param name="SerialCorrelation">
/// The correlation of each value with the next: the sum of products of neighbouring distances from the mean over the
/// sum of all squared distances; null if the values are all the same. Box and Jenkins (1976), Time Series Analysis,
/// revised ed., section 2.1.
/// </param>
public sealed record SampleMoments(int Count, double Mean, double? StandardDeviation, double? SerialCorrelation)
{
    /// <summary>Computes the moments of a sample.</summary>
    /// <param name="values">The values, in the order in which they came.</param>
    /// <exception cref="ArgumentException">There is no value, or one isn't finite.</exception>
    public static SampleMoments Of(IEnumerable<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        double[] sample = [.. values];
        if (sample.Length == 0 || !sample.All(double.IsFinite))
        {
            throw new ArgumentException("Moments need at least one value, and finite ones only.", nameof(values));
        }

        if (sample.All(value => value == sample[0]))
        {
            return new SampleMoments(sample.Length, sample[0], sample.Length == 1 ? null : 0, null);
        }

        var mean = DoubledSums.Sum(sample) / sample.Length;
        var distances = Array.ConvertAll(sample, value => value - mean);
        var squares = DoubledArithmetic.Inner(distances, distances);
        var neighbours = DoubledArithmetic.Inner(distances.AsSpan(1), distances.AsSpan(0, sample.Length - 1));
        return new SampleMoments(
            sample.Length, mean.High, Doubled.Sqrt(squares / (sample.Length - 1)).High, (neighbours / squares).High);
    }
}
