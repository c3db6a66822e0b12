namespace BakeInsights.Inference;

/// <summary>Least-squares coefficients with their joint distribution.</summary>
/// <param name="Names">The names of the columns.</param>
/// <param name="Triangle">The triangular factor of the columns.</param>
/// <param name="Values">The coefficients.</param>
/// <param name="ResidualVariance">The residual mean square.</param>
/// <param name="DegreesOfFreedom">Its degrees of freedom.</param>
internal sealed record Coefficients(
    IReadOnlyList<string> Names, Triangle Triangle, Doubled[] Values, double ResidualVariance, int DegreesOfFreedom)
{
    /// <summary>The terms, one a column.</summary>
    public Term[] Terms() => [.. Names.Select((name, j) => Combination(Unit(j), name))];

    /// <summary>A linear combination of the coefficients.</summary>
    public Term Combination(IReadOnlyList<double> weights, string name)
    {
        var scale = Math.Sqrt(ResidualVariance) * Math.Sqrt(VarianceFactor(weights));
        Doubled estimate = 0;
        for (var j = 0; j < Values.Length; j++)
        {
            estimate += Values[j] * weights[j];
        }

        return new Term(name, estimate.High, scale, DegreesOfFreedom);
    }

    /// <summary>The variance of a combination over the residual variance.</summary>
    public double VarianceFactor(IReadOnlyList<double> weights) => Factor(Whitened(weights), Whitened(weights));

    /// <summary>The covariance of two combinations.</summary>
    public double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second) =>
        ResidualVariance * Factor(Whitened(first), Whitened(second));

    /// <summary>The weights that pick one coefficient.</summary>
    public double[] Unit(int place)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, Triangle.Size);
        var unit = new double[Triangle.Size];
        unit[place] = 1;
        return unit;
    }

    private static double Factor(Doubled[] first, Doubled[] second) =>
        DoubledArithmetic.Inner(first, second).High;

    private Doubled[] Whitened(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        return weights.Count == Triangle.Size
            ? Triangle.SolveTransposed([.. weights])
            : throw new ArgumentException(
                $"There are {weights.Count} weights for {Triangle.Size} columns.", nameof(weights));
    }
}
