namespace BakeInsights.Inference;

/// <summary>Lengths of vectors.</summary>
internal static class Norm
{
    /// <summary>The Euclidean length.</summary>
    public static double Of(ReadOnlySpan<double> vector) => Math.Sqrt(Squared(vector));

    /// <summary>The sum of squares.</summary>
    public static double Squared(ReadOnlySpan<double> vector)
    {
        var sum = 0.0;
        foreach (var v in vector)
        {
            sum += v * v;
        }

        return sum;
    }
}
