namespace BakeInsights.Inference;

/// <summary>Residual spreads at even steps of their logarithm, with the weight of each.</summary>
/// <remarks>
/// The trapezoidal rule over the whole line converges exponentially for a smooth density that falls at both ends:
/// Trefethen and Weideman (2014), The exponentially convergent trapezoidal rule, SIAM Review 56, 385-458.
/// </remarks>
internal static class SpreadGrid
{
    /// <summary>
    /// Common practice, no source: a fifth of the density's width a step, in the case that is widest.
    /// </summary>
    private const int Steps = 200;

    /// <summary>Times to narrow the range to where the density is.</summary>
    private const int Narrowings = 3;

    /// <summary>The exponent below which a weight is lost in rounding.</summary>
    private const double CutOff = 40;

    /// <summary>Finds the grid.</summary>
    /// <param name="logDensity">The logarithm of the density of ln spread, up to a constant.</param>
    /// <param name="low">A logarithm below which the density is nothing.</param>
    /// <param name="high">A logarithm above which the density is nothing.</param>
    public static IReadOnlyList<(double Spread, double Weight)> Of(
        Func<double, double> logDensity, double low, double high)
    {
        double[] at = [], logs = [];
        for (var k = 0; k <= Narrowings; k++)
        {
            var step = (high - low) / Steps;
            var from = low;
            at = [.. Enumerable.Range(0, Steps + 1).Select(i => from + (i * step))];
            logs = [.. at.Select(logDensity)];
            var highest = logs.Max();
            var first = Array.FindIndex(logs, l => l > highest - CutOff);
            var last = Array.FindLastIndex(logs, l => l > highest - CutOff);
            (low, high) = (at[Math.Max(first - 1, 0)], at[Math.Min(last + 1, Steps)]);
        }

        var top = logs.Max();
        var total = logs.Sum(l => Math.Exp(l - top));
        return [.. at.Zip(logs, (u, l) => (Math.Exp(u), Weight: Math.Exp(l - top) / total))
            .Where(part => part.Weight > 0)];
    }
}
