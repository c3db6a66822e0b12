namespace BakeInsights.Inference;

/// <summary>P values of several questions asked of one data set, adjusted for their number.</summary>
public static class AdjustedPValues
{
    /// <summary>
    /// Adjusts so that rejecting what is at most 0.05 rejects any true hypothesis in at most 5 % of data sets, whatever
    /// the dependence between the questions.
    /// </summary>
    /// <remarks>
    /// Holm (1979), A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6,
    /// 65-70.
    /// </remarks>
    /// <param name="pValues">The p values, each from 0 to 1.</param>
    /// <returns>The adjusted p values in the order given.</returns>
    /// <exception cref="ArgumentException">A p value is not between 0 and 1.</exception>
    public static IReadOnlyList<double> Holm(IReadOnlyList<double> pValues)
    {
        var order = Order(pValues);
        var adjusted = new double[order.Length];
        var highest = 0.0;
        for (var rank = 0; rank < order.Length; rank++)
        {
            highest = Math.Max(highest, Math.Min(1, (order.Length - rank) * pValues[order[rank]]));
            adjusted[order[rank]] = highest;
        }

        return adjusted;
    }

    /// <summary>
    /// Adjusts so that among what is rejected at 0.05 at most 5 % are true hypotheses on average, for independent or
    /// positively dependent questions.
    /// </summary>
    /// <remarks>
    /// Benjamini and Hochberg (1995), Controlling the false discovery rate, Journal of the Royal Statistical Society B
    /// 57, 289-300; positive dependence: Benjamini and Yekutieli (2001), Annals of Statistics 29, 1165-1188.
    /// </remarks>
    /// <inheritdoc cref="Holm"/>
    public static IReadOnlyList<double> BenjaminiHochberg(IReadOnlyList<double> pValues)
    {
        var order = Order(pValues);
        var adjusted = new double[order.Length];
        var lowest = 1.0;
        for (var rank = order.Length - 1; rank >= 0; rank--)
        {
            lowest = Math.Min(lowest, order.Length * pValues[order[rank]] / (rank + 1));
            adjusted[order[rank]] = lowest;
        }

        return adjusted;
    }

    /// <summary>The places of the p values, smallest first.</summary>
    private static int[] Order(IReadOnlyList<double> pValues)
    {
        ArgumentNullException.ThrowIfNull(pValues);
        return pValues.All(p => p is >= 0 and <= 1)
            ? [.. Enumerable.Range(0, pValues.Count).OrderBy(i => pValues[i])]
            : throw new ArgumentException("A p value lies between 0 and 1.", nameof(pValues));
    }
}
