namespace BakeInsights.Inference;

/// <summary>Sums over doubles that are carried in doubled precision.</summary>
/// <remarks>Ogita, Rump and Oishi (2005), Accurate sum and dot product, SIAM Journal on Scientific Computing 26,
/// 1955-1988: as if computed in twice the working precision and then rounded.</remarks>
internal static class DoubledSums
{
    /// <summary>The sum of the values.</summary>
    public static Doubled Sum(ReadOnlySpan<double> values)
    {
        var (high, low) = (0.0, 0.0);
        foreach (var value in values)
        {
            var sum = Doubled.Sum(high, value);
            high = sum.High;
            low += sum.Low;
        }

        return Doubled.Sum(high, low);
    }

    /// <summary>The sum of the products of two lists of equal length.</summary>
    public static Doubled Products(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        var (high, low) = (0.0, 0.0);
        for (var i = 0; i < first.Length; i++)
        {
            var product = Doubled.Product(first[i], second[i]);
            var sum = Doubled.Sum(high, product.High);
            high = sum.High;
            low += sum.Low + product.Low;
        }

        return Doubled.Sum(high, low);
    }

    /// <summary>The sum of the squared distances from a centre, each counted by its weight.</summary>
    /// <param name="values">The values.</param>
    /// <param name="centre">The centre.</param>
    /// <param name="weights">A weight for each value; none where all count alike.</param>
    public static Doubled SquaredDistances(ReadOnlySpan<double> values, Doubled centre, ReadOnlySpan<double> weights)
    {
        var (high, low) = (0.0, 0.0);
        for (var i = 0; i < values.Length; i++)
        {
            var distance = Doubled.Sum(values[i], -centre.High);
            var rest = distance.Low - centre.Low;
            var square = Doubled.Product(distance.High, distance.High);
            var squareRest = square.Low + (2 * distance.High * rest);
            if (!weights.IsEmpty)
            {
                var weighted = Doubled.Product(square.High, weights[i]);
                (square, squareRest) = (weighted, weighted.Low + (squareRest * weights[i]));
            }

            var sum = Doubled.Sum(high, square.High);
            high = sum.High;
            low += sum.Low + squareRest;
        }

        return Doubled.Sum(high, low);
    }
}
