namespace BakeInsights.Inference;

/// <summary>Critical values of Fisher's F, by halving on the tail.</summary>
internal static class FisherQuantile
{
    /// <summary>The f that F exceeds with a probability.</summary>
    /// <param name="upper">The probability, between 0 and 1.</param>
    /// <param name="df1">The numerator's degrees of freedom.</param>
    /// <param name="df2">The denominator's degrees of freedom.</param>
    public static double Of(double upper, double df1, double df2)
    {
        var (low, high) = (0.0, 1.0);
        while (Tails.FisherUpper(high, df1, df2) > upper)
        {
            (low, high) = (high, 2 * high);
        }

        for (var middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2)
        {
            (low, high) = Tails.FisherUpper(middle, df1, df2) > upper ? (middle, high) : (low, middle);
        }

        return high;
    }
}
