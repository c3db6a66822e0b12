namespace BakeInsights.Inference;

/// <summary>The S-estimate: the coefficients whose residuals have the least robust scale.</summary>
/// <remarks>
/// Salibian-Barrera and Yohai (2006): from many small sets of rows, a few steps each, and the best few to the end. The
/// least-squares fit is one more start, so that there always is one.
/// </remarks>
internal static class FastS
{
    /// <summary>Starts, steps from each, and how many go on: as the paper proposes.</summary>
    private const int Starts = 500, FirstSteps = 2, Best = 5;

    /// <summary>
    /// The share of the loss's maximum that the mean loss is held at, so that half of the rows may be wild.
    /// </summary>
    private const double MeanLoss = 0.5;

    private const int MostSteps = 1000;

    /// <summary>
    /// How near a scale is brought: roughly to choose among starts, to rounding at the end. Our choice.
    /// </summary>
    private const double Rough = 1e-3, Fine = 1e-13;

    /// <summary>The coefficients and their scale.</summary>
    public static (Doubled[] Coefficients, double Scale) Of(RobustRows rows, int seed)
    {
        var random = new Random(seed);
        List<(Doubled[] Coefficients, double Scale)> candidates =
            [Improved(rows, rows.Coefficients, FirstSteps, Rough)];
        for (var k = 0; k < Starts; k++)
        {
            if (rows.Through(Drawn(random, rows.Count, rows.Predictors)) is { } through)
            {
                candidates.Add(Improved(rows, through, FirstSteps, Rough));
            }
        }

        return candidates.OrderBy(candidate => candidate.Scale).Take(Best)
            .Select(candidate => Improved(rows, candidate.Coefficients, MostSteps, Fine))
            .MinBy(candidate => candidate.Scale);
    }

    /// <summary>
    /// The scale at which the mean loss of the residuals is half of its maximum, columns being allowed for.
    /// </summary>
    private static double Scale(double[] residuals, int predictors, double nearness)
    {
        var allowed = (residuals.Length - predictors) * MeanLoss;
        var scale = RobustRows.MedianScale(residuals);
        if (scale == 0)
        {
            // More than half are zero; the rest may still carry a scale.
            scale = residuals.Max(Math.Abs);
        }

        for (var step = 0; step < MostSteps && scale > 0; step++)
        {
            var before = scale;
            scale *= Math.Sqrt(residuals.Sum(r => RobustLoss.HalfBreakdownRho(r / before)) / allowed);
            if (Math.Abs(scale - before) <= nearness * before)
            {
                break;
            }
        }

        return scale;
    }

    private static (Doubled[] Coefficients, double Scale) Improved(
        RobustRows rows, Doubled[] start, int steps, double nearness)
    {
        var coefficients = start;
        var scale = Scale(rows.Residuals(coefficients), rows.Predictors, nearness);
        for (var step = 0; step < steps && !rows.IsNegligible(scale); step++)
        {
            var current = scale;
            double[] weights = Array.ConvertAll(
                rows.Residuals(coefficients), r => RobustLoss.HalfBreakdownBisquare.Weight(r / current));
            var next = Solution.CoefficientsOf(rows.Weighted(weights));
            var nextScale = Scale(rows.Residuals(next), rows.Predictors, nearness);

            // Each step lowers the scale; once it doesn't, to rounding, the end is reached.
            if (!(nextScale < scale * (1 - 1e-15)))
            {
                break;
            }

            (coefficients, scale) = (next, nextScale);
        }

        return (coefficients, scale);
    }

    private static int[] Drawn(Random random, int rows, int count)
    {
        var drawn = new HashSet<int>();
        while (drawn.Count < count)
        {
            drawn.Add(random.Next(rows));
        }

        return [.. drawn];
    }
}
