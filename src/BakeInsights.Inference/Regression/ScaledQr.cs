using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BakeInsights.Inference;

/// <summary>
/// The thin Householder QR factorization of a design whose columns are first scaled to unit length: X = Q R D, where
/// D holds the columns' lengths. Q is n by p; nothing is n by n.
/// </summary>
/// <remarks>
/// Columns are not exchanged. So |R_jj| is the sine of the angle between column j and the span of those before it, and
/// the column that is reported as dependent is the later one, whatever the data. Method: Golub and Van Loan (2013),
/// Matrix Computations, 4th ed., sections 5.2 and 5.3; scaling: van der Sluis (1969), Numerische Mathematik 14, 14-23.
/// </remarks>
internal sealed class ScaledQr
{
    private readonly Matrix<double> _q;

    private ScaledQr(Matrix<double> q, ScaledTriangle triangle)
    {
        _q = q;
        Triangle = triangle;
    }

    /// <summary>R and D, which carry the variances; they alone outlive the fit.</summary>
    public ScaledTriangle Triangle { get; }

    /// <summary>Factorizes a design of finite columns, none of them zero throughout.</summary>
    public static ScaledQr Of(Design design)
    {
        var lengths = design.Columns.Select(column => Length(column.Span)).ToArray();
        var scaled = new double[design.RowCount * lengths.Length];
        for (var j = 0; j < lengths.Length; j++)
        {
            var source = design.Columns[j].Span;
            var target = scaled.AsSpan(j * design.RowCount, design.RowCount);
            for (var i = 0; i < target.Length; i++)
            {
                target[i] = source[i] / lengths[j];
            }
        }

        var factors = Matrix<double>.Build.Dense(design.RowCount, lengths.Length, scaled).QR(QRMethod.Thin);
        return new ScaledQr(factors.Q, new ScaledTriangle(factors.R, lengths));
    }

    /// <summary>The Euclidean length of a vector.</summary>
    public static double Length(ReadOnlySpan<double> vector) => Math.Sqrt(SumOfSquares(vector));

    /// <summary>The sum of the squares of a vector.</summary>
    public static double SumOfSquares(ReadOnlySpan<double> vector)
    {
        var sum = 0.0;
        foreach (var v in vector)
        {
            sum += v * v;
        }

        return sum;
    }

    /// <summary>The coordinates of a vector along the columns of Q.</summary>
    public double[] Coordinates(double[] vector) =>
        _q.TransposeThisAndMultiply(Vector<double>.Build.Dense(vector)).ToArray();

    /// <summary>The vector with the given coordinates along the columns of Q.</summary>
    public double[] At(double[] coordinates) => _q.Multiply(Vector<double>.Build.Dense(coordinates)).ToArray();

    /// <summary>The diagonal of the projection on the columns: the squared lengths of the rows of Q.</summary>
    public double[] Leverage()
    {
        var leverage = new double[_q.RowCount];
        for (var j = 0; j < _q.ColumnCount; j++)
        {
            for (var i = 0; i < leverage.Length; i++)
            {
                leverage[i] += _q[i, j] * _q[i, j];
            }
        }

        // Rounding can carry a row that the fit must pass through just past 1.
        return Array.ConvertAll(leverage, h => Math.Min(h, 1));
    }
}
