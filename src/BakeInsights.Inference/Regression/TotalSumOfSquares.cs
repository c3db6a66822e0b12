namespace BakeInsights.Inference;

/// <summary>The weighted sum of squares of a response.</summary>
internal static class TotalSumOfSquares
{
    /// <summary>About the weighted mean, or about zero.</summary>
    public static Doubled About(WorkRows rows, bool centred)
    {
        Doubled centre = 0;
        if (centred)
        {
            centre = rows.Weights is { } weights
                ? DoubledSums.Products(rows.Response.Span, weights) / DoubledSums.Sum(weights)
                : DoubledSums.Sum(rows.Response.Span) / rows.Count;
        }

        return DoubledSums.SquaredDistances(rows.Response.Span, centre, rows.Weights);
    }
}
