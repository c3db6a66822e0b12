using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>The p by p part of X = Q R D: R upper triangular, D the lengths of the columns of X.</summary>
/// <param name="R">The triangle.</param>
/// <param name="Lengths">The lengths of the design's columns.</param>
internal sealed record ScaledTriangle(Matrix<double> R, double[] Lengths)
{
    /// <summary>The number of columns.</summary>
    public int Size => Lengths.Length;

    /// <summary>Coefficients from coordinates along Q: solves R D b = coordinates.</summary>
    public double[] Coefficients(double[] coordinates)
    {
        var scaled = SolveUpper(coordinates, Size);
        return [.. scaled.Select((value, j) => value / Lengths[j])];
    }

    /// <summary>The vector z = (R D)^-T w, for which the variance of w'b is sigma squared times z'z.</summary>
    public double[] Whitened(IReadOnlyList<double> weights)
    {
        var z = new double[Size];
        for (var i = 0; i < Size; i++)
        {
            var sum = weights[i] / Lengths[i];
            for (var k = 0; k < i; k++)
            {
                sum -= R[k, i] * z[k];
            }

            z[i] = sum / R[i, i];
        }

        return z;
    }

    /// <summary>
    /// The first column that is a combination of those before it, and the places of these; null if there is none.
    /// </summary>
    /// <remarks>
    /// Let c be the coefficients of the unit-length column j on the unit-length columns before it. The computed
    /// factors are exact for a design whose columns differ from the given ones by at most <paramref name="tolerance"/>
    /// times their length (Higham 2002, Accuracy and Stability of Numerical Algorithms, 2nd ed., theorem 19.4, its
    /// constant dropped). Changes of that size move column j against the combination by up to
    /// tolerance (1 + sum |c|). A column no farther than this from the span of the others can't be told from one in it.
    /// </remarks>
    public (int Column, int[] Earlier)? FirstDependence(double tolerance)
    {
        for (var j = 1; j < Size; j++)
        {
            var combination = SolveUpper(R.Column(j).ToArray(), j);
            if (Math.Abs(R[j, j]) <= tolerance * (1 + combination.Sum(Math.Abs)))
            {
                // Common practice, no source: a share this small is rounding, half of the digits being safe.
                var negligible = Math.Sqrt(tolerance) * combination.Max(Math.Abs);
                return (j, [.. Enumerable.Range(0, j).Where(k => Math.Abs(combination[k]) > negligible)]);
            }
        }

        return null;
    }

    /// <summary>Solves the leading equations of R x = right-hand side.</summary>
    private double[] SolveUpper(double[] rightHandSide, int size)
    {
        var x = new double[size];
        for (var i = size - 1; i >= 0; i--)
        {
            var sum = rightHandSide[i];
            for (var k = i + 1; k < size; k++)
            {
                sum -= R[i, k] * x[k];
            }

            x[i] = sum / R[i, i];
        }

        return x;
    }
}
