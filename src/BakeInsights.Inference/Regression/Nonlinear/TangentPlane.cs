using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BakeInsights.Inference;

/// <summary>The linear model at a point: derivatives factorized, and residuals in their coordinates.</summary>
internal sealed class TangentPlane
{
    private readonly Matrix<double> _q, _r;
    private readonly double[] _lengths;
    private readonly double[] _coordinates;

    /// <summary>Factorizes columns of derivatives, each scaled to unit length.</summary>
    public TangentPlane(double[][] slopes, double[] residuals)
    {
        _lengths = [.. slopes.Select(column => Norm.Of(column))];
        var unit = Matrix<double>.Build.DenseOfColumns(slopes.Select(
            (column, j) => column.Select(v => _lengths[j] > 0 ? v / _lengths[j] : 0)));
        var qr = unit.QR(QRMethod.Thin);
        (_q, _r) = (qr.Q, qr.R);
        _coordinates = _q.TransposeThisAndMultiply(Vector<double>.Build.Dense(residuals)).ToArray();
    }

    /// <summary>The lengths of the columns of derivatives.</summary>
    public IReadOnlyList<double> Lengths => _lengths;

    /// <summary>The weight of each row's response in its own fitted value, in the linear model.</summary>
    public IReadOnlyList<double> Leverage() =>
        [.. _q.EnumerateRows().Select(row => Math.Min(row.DotProduct(row), 1))];

    /// <summary>The length of the residuals' projection: what a linear model could still take off them.</summary>
    public double Projection => Norm.Of(_coordinates);

    private int Size => _lengths.Length;

    /// <summary>The first parameter that the linear model leaves open; null if all are determined.</summary>
    /// <param name="noise">
    /// How exact the derivatives are, relatively: a column this near the others' span is in it.
    /// </param>
    public int? Undetermined(double noise)
    {
        for (var j = 0; j < Size; j++)
        {
            if (!(Math.Abs(_r[j, j]) > noise))
            {
                return j;
            }
        }

        return null;
    }

    /// <summary>
    /// The step that minimizes the linear model's sum of squares plus damping times the scaled step's.
    /// </summary>
    /// <param name="damping">0 or more.</param>
    /// <param name="scale">What a unit step of each parameter counts.</param>
    /// <returns>The step, and by how much the linear model's sum of squares falls; null if it can't be had.</returns>
    public (double[] Step, double Fall)? Step(double damping, double[] scale)
    {
        var stacked = Matrix<double>.Build.Dense(2 * Size, Size);
        stacked.SetSubMatrix(0, 0, _r);
        for (var j = 0; j < Size; j++)
        {
            stacked[Size + j, j] = Math.Sqrt(damping) * scale[j] / (_lengths[j] > 0 ? _lengths[j] : 1);
        }

        var right = Vector<double>.Build.Dense(2 * Size);
        right.SetSubVector(0, Size, Vector<double>.Build.Dense(_coordinates));
        var qr = stacked.QR(QRMethod.Thin);
        var x = qr.Q.TransposeThisAndMultiply(right).ToArray();
        for (var i = Size - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < Size; k++)
            {
                x[i] -= qr.R[i, k] * x[k];
            }

            x[i] /= qr.R[i, i];
        }

        var moved = _r.Multiply(Vector<double>.Build.Dense(x)).ToArray();
        var fall = moved.Zip(_coordinates, (m, c) => m * ((2 * c) - m)).Sum();
        double[] step = [.. x.Select((v, j) => v / (_lengths[j] > 0 ? _lengths[j] : 1))];
        return step.All(double.IsFinite) && double.IsFinite(fall) ? (step, fall) : null;
    }

    /// <summary>The covariances of the parameters for a residual variance of 1.</summary>
    public double[,] Covariance()
    {
        var inverse = _r.Inverse();
        var covariance = new double[Size, Size];
        for (var i = 0; i < Size; i++)
        {
            for (var j = 0; j < Size; j++)
            {
                covariance[i, j] = inverse.Row(i).DotProduct(inverse.Row(j)) / _lengths[i] / _lengths[j];
            }
        }

        return covariance;
    }
}
