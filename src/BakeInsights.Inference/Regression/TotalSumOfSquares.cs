namespace BakeInsights.Inference;

/// <summary>The weighted sum of squares of a column.</summary>
internal static class TotalSumOfSquares
{
    /// <summary>About the weighted mean, or about zero.</summary>
    public static Doubled About(ReadOnlySpan<double> values, double[]? weights, bool centred)
    {
        Doubled centre = 0;
        if (centred)
        {
            centre = weights is null
                ? DoubledSums.Sum(values) / values.Length
                : DoubledSums.Products(values, weights) / DoubledSums.Sum(weights);
        }

        return DoubledSums.SquaredDistances(values, centre, weights);
    }
}
