namespace BakeInsights.Inference;

/// <summary>The Cholesky factor of a symmetric positive definite matrix, its diagonal first scaled to 1.</summary>
/// <remarks>Method: Golub and Van Loan (2013), Matrix Computations, 4th ed., section 4.2; scaling:
/// van der Sluis (1969), Numerische Mathematik 14, 14-23, so that the units of the parameters don't matter.</remarks>
internal sealed class Information
{
    private readonly double[,] _factor;
    private readonly double[] _scale;

    private Information(double[,] factor, double[] scale) => (_factor, _scale) = (factor, scale);

    private int Size => _scale.Length;

    /// <summary>Factorizes; null if the matrix isn't positive definite to rounding.</summary>
    /// <param name="matrix">The matrix, of which the lower triangle is read.</param>
    /// <param name="ridge">What is added to the scaled diagonal of ones.</param>
    public static Information? Of(double[,] matrix, double ridge = 0)
    {
        var size = matrix.GetLength(0);
        var scale = new double[size];
        for (var i = 0; i < size; i++)
        {
            scale[i] = Math.Sqrt(ridge > 0 ? Math.Abs(matrix[i, i]) : matrix[i, i]);
            if (!(scale[i] > 0) || !double.IsFinite(scale[i]))
            {
                return null;
            }
        }

        var factor = new double[size, size];
        for (var j = 0; j < size; j++)
        {
            for (var i = j; i < size; i++)
            {
                var sum = (matrix[i, j] / scale[i] / scale[j]) + (i == j ? ridge : 0);
                for (var k = 0; k < j; k++)
                {
                    sum -= factor[i, k] * factor[j, k];
                }

                // A pivot of the scaled matrix that has lost all digits to the subtraction is rounding.
                if (i == j && !(sum > size * LeastSquares.Epsilon))
                {
                    return null;
                }

                factor[i, j] = i == j ? Math.Sqrt(sum) : sum / factor[j, j];
            }
        }

        return new Information(factor, scale);
    }

    /// <summary>Solves matrix x = right-hand side.</summary>
    public double[] Solve(IReadOnlyList<double> rightHandSide)
    {
        var x = new double[Size];
        for (var i = 0; i < Size; i++)
        {
            var sum = rightHandSide[i] / _scale[i];
            for (var k = 0; k < i; k++)
            {
                sum -= _factor[i, k] * x[k];
            }

            x[i] = sum / _factor[i, i];
        }

        for (var i = Size - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < Size; k++)
            {
                x[i] -= _factor[k, i] * x[k];
            }

            x[i] /= _factor[i, i];
        }

        return [.. x.Select((value, i) => value / _scale[i])];
    }

    /// <summary>Turns independent standard normal deviates into deviates whose covariance is the inverse.</summary>
    public double[] Deviate(IReadOnlyList<double> independent)
    {
        double[] x = [.. independent];
        for (var i = Size - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < Size; k++)
            {
                x[i] -= _factor[k, i] * x[k];
            }

            x[i] /= _factor[i, i];
        }

        return [.. x.Select((value, i) => value / _scale[i])];
    }

    /// <summary>The inverse: the covariance, if the matrix is an information.</summary>
    public double[,] Inverse()
    {
        var inverse = new double[Size, Size];
        for (var j = 0; j < Size; j++)
        {
            var unit = new double[Size];
            unit[j] = 1;
            var column = Solve(unit);
            for (var i = 0; i < Size; i++)
            {
                inverse[i, j] = column[i];
            }
        }

        return inverse;
    }

    /// <summary>The natural logarithm of the determinant.</summary>
    public double LogDeterminant() =>
        Enumerable.Range(0, Size).Sum(i => 2 * (Math.Log(_factor[i, i]) + Math.Log(_scale[i])));
}
