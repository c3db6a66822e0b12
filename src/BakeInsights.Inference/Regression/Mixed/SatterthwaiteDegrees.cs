using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>
/// Degrees of freedom of a variance that is a function of the estimated variances: twice its square over the variance
/// of its own estimate.
/// </summary>
/// <remarks>
/// Satterthwaite (1946), Biometrics Bulletin 2, 110-114; for mixed models Giesbrecht and Burns (1985), Biometrics 41,
/// 477-486. The variance of the estimated variances is twice the inverse of the deviance's second derivatives by the
/// factor's numbers and the logarithm of the residual variance. In a direction in which these vanish, as at the edge of
/// no variance, nothing is counted.
/// </remarks>
internal sealed class SatterthwaiteDegrees
{
    private readonly int _size;
    private readonly double[,] _jacobian;
    private readonly Matrix<double> _spread;

    /// <summary>Takes the second derivatives at the minimum.</summary>
    public SatterthwaiteDegrees(DevianceDerivatives at, RelativeFactor factor, int divisor)
    {
        _size = at.LogChange.Length;
        _jacobian = factor.Jacobian(_size);
        var variance = at.ResidualSum / divisor;
        var gradient = new double[_size];
        var bend = new double[_size, _size];
        for (var k = 0; k < _size; k++)
        {
            gradient[k] = at.LogChange[k] + (at.ResidualChange[k] / variance);
            for (var l = 0; l < _size; l++)
            {
                bend[k, l] = at.LogBend[k, l] + (at.ResidualBend[k, l] / variance);
            }
        }

        var byFactor = factor.Chain(gradient, bend).Bend;
        var byResidual = ByFactor([.. at.ResidualChange.Select(v => -v / variance)]);
        var whole = Matrix<double>.Build.Dense(_size + 1, _size + 1, (i, j) =>
            i == _size ? (j == _size ? divisor : byResidual[j]) : j == _size ? byResidual[i] : byFactor[i, j]);
        _spread = 2 * PseudoInverse(whole);
    }

    /// <summary>The degrees of freedom of the variance (residual variance) x value.</summary>
    /// <param name="value">The value, above 0.</param>
    /// <param name="change">Its derivatives by the elements of the relative covariance.</param>
    public double Of(double value, double[] change)
    {
        // By the logarithm of the residual variance the derivative is the variance itself.
        var gradient = Vector<double>.Build.DenseOfEnumerable(ByFactor(change).Append(value));
        return 2 * value * value / (gradient * _spread * gradient);
    }

    private double[] ByFactor(double[] change)
    {
        var result = new double[_size];
        for (var i = 0; i < _size; i++)
        {
            for (var k = 0; k < _size; k++)
            {
                result[i] += _jacobian[k, i] * change[k];
            }
        }

        return result;
    }

    /// <summary>The inverse in units in which the diagonal is 1, without directions of no bend.</summary>
    private static Matrix<double> PseudoInverse(Matrix<double> symmetric)
    {
        // Common practice, no source: bends below this are taken for none.
        const double Negligible = 1e-10;
        var units = symmetric.Diagonal().Map(v => v == 0 ? 1 : 1 / Math.Sqrt(Math.Abs(v)));
        var scaled = Matrix<double>.Build.Dense(
            symmetric.RowCount, symmetric.ColumnCount, (i, j) => symmetric[i, j] * units[i] * units[j]);
        var axes = scaled.Evd(Symmetricity.Symmetric);
        var inverse = Matrix<double>.Build.DenseOfDiagonalVector(
            axes.EigenValues.Real().Map(v => v > Negligible ? 1 / v : 0));
        var back = axes.EigenVectors * inverse * axes.EigenVectors.Transpose();
        return Matrix<double>.Build.Dense(
            back.RowCount, back.ColumnCount, (i, j) => back[i, j] * units[i] * units[j]);
    }
}
