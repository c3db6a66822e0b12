using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>
/// Gauss-Hermite quadrature: the integral of e^(-x x) f(x) over the whole line as a weighted sum of f at nodes.
/// </summary>
/// <remarks>
/// Nodes are the eigenvalues of the Jacobi matrix: Golub and Welsch (1969), Calculation of Gauss quadrature rules,
/// Mathematics of Computation 23, 221-230.
/// </remarks>
internal static class HermiteRule
{
    /// <summary>The nodes, each with the logarithm of its weight.</summary>
    public static IReadOnlyList<(double Node, double LogWeight)> Of(int order)
    {
        var jacobi = Matrix<double>.Build.Dense(order, order);
        for (var k = 1; k < order; k++)
        {
            jacobi[k, k - 1] = jacobi[k - 1, k] = Math.Sqrt(k / 2.0);
        }

        var eigen = jacobi.Evd(Symmetricity.Symmetric);
        return [.. Enumerable.Range(0, order).Select(k =>
            (eigen.EigenValues[k].Real, (2 * Math.Log(Math.Abs(eigen.EigenVectors[0, k]))) + (Math.Log(Math.PI) / 2)))];
    }
}
