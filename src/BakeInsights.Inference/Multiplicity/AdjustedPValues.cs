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
    /// 65-70; its weights are of the same paper: a question of weight 2 has as much of the 5 % as two of weight 1.
    /// </remarks>
    /// <param name="pValues">The p values, each from 0 to 1.</param>
    /// <param name="weights">A weight for each, more than 0, fixed before the data were seen; null for equal ones.</param>
    /// <returns>The adjusted p values in the order given.</returns>
    /// <exception cref="ArgumentException">A p value is not between 0 and 1, or a weight is missing or not above 0.</exception>
    public static IReadOnlyList<double> Holm(IReadOnlyList<double> pValues, IReadOnlyList<double>? weights = null)
    {
        RequirePValues(pValues);
        if (weights is not null && (weights.Count != pValues.Count || !weights.All(weight => weight > 0 && double.IsFinite(weight))))
        {
            throw new ArgumentException("Each p value has a weight above 0.", nameof(weights));
        }

        var order = Enumerable.Range(0, pValues.Count).OrderBy(place => pValues[place] / Weight(place)).ToArray();
        var adjusted = new double[order.Length];
        var left = order.Sum(Weight);
        var highest = 0.0;
        foreach (var place in order)
        {
            highest = Math.Max(highest, Math.Min(1, left * pValues[place] / Weight(place)));
            adjusted[place] = highest;
            left -= Weight(place);
        }

        return adjusted;

        double Weight(int place) => weights?[place] ?? 1;
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
        RequirePValues(pValues);
        var order = Enumerable.Range(0, pValues.Count).OrderBy(place => pValues[place]).ToArray();
        var adjusted = new double[order.Length];
        var lowest = 1.0;
        for (var rank = order.Length - 1; rank >= 0; rank--)
        {
            lowest = Math.Min(lowest, order.Length * pValues[order[rank]] / (rank + 1));
            adjusted[order[rank]] = lowest;
        }

        return adjusted;
    }

    private static void RequirePValues(IReadOnlyList<double> pValues)
    {
        ArgumentNullException.ThrowIfNull(pValues);
        if (!pValues.All(p => p is >= 0 and <= 1))
        {
            throw new ArgumentException("A p value lies between 0 and 1.", nameof(pValues));
        }
    }
}
