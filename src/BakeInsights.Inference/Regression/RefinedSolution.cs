namespace BakeInsights.Inference;

/// <summary>The least-squares solution after one step of refinement.</summary>
/// <remarks>
/// Each row's remainder is a sum of p + 1 terms, so unlike that of the factorization its rounding doesn't grow with the
/// number of rows. Method: Golub (1965), Numerical methods for solving linear least squares problems, Numerische
/// Mathematik 7, 206-216, here with remainders in double precision.
/// </remarks>
/// <param name="Coefficients">The coefficients, in the order of the columns.</param>
/// <param name="Residuals">The residuals by row; all exactly 0 if they are no larger than rounding.</param>
internal sealed record RefinedSolution(double[] Coefficients, double[] Residuals)
{
    /// <summary>Solves, then fits what the rounded coefficients leave and adds that.</summary>
    public static RefinedSolution Of(Design design, DesignColumn response, ScaledQr qr)
    {
        var triangle = qr.Triangle;
        var first = triangle.Coefficients(qr.Coordinates([.. response.Values]));
        var remainder = Remainder(design, response, first);
        var coordinates = qr.Coordinates(remainder);
        var coefficients = Sum(first, 1, triangle.Coefficients(coordinates));
        var residuals = Sum(remainder, -1, qr.At(coordinates));

        var rounding = Rounding(response, coefficients, triangle.Lengths);
        return ScaledQr.Length(residuals) > rounding
            ? new RefinedSolution(coefficients, residuals)
            : new RefinedSolution(
                [.. coefficients.Zip(triangle.Lengths, (b, d) => Math.Abs(b) * d > rounding ? b : 0)],
                new double[residuals.Length]);
    }

    private static double[] Remainder(Design design, DesignColumn response, double[] coefficients)
    {
        double[] remainder = [.. response.Values];
        for (var j = 0; j < coefficients.Length; j++)
        {
            var column = design.Columns[j].Span;
            for (var i = 0; i < remainder.Length; i++)
            {
                remainder[i] -= coefficients[j] * column[i];
            }
        }

        return remainder;
    }

    /// <summary>
    /// How long the residuals of a perfect fit can be by rounding: each is a sum of p + 1 terms and takes p + 2
    /// roundings of at most half an epsilon of the summed magnitudes (Higham 2002, Accuracy and Stability of Numerical
    /// Algorithms, 2nd ed., section 3.1); a whole epsilon is allowed, for the data are rounded too.
    /// </summary>
    private static double Rounding(DesignColumn response, double[] coefficients, double[] lengths)
    {
        var summed = ScaledQr.Length(response.Span) + coefficients.Zip(lengths, (b, d) => Math.Abs(b) * d).Sum();
        return (coefficients.Length + 2) * LeastSquares.Epsilon * summed;
    }

    private static double[] Sum(double[] vector, double factor, double[] other) =>
        [.. vector.Zip(other, (a, b) => a + (factor * b))];
}
