using System.Runtime.Intrinsics;

namespace BakeInsights.Inference;

/// <summary>Columns X = Q R with orthonormal Q, by Gram-Schmidt orthogonalization done twice.</summary>
/// <remarks>
/// Twice is enough for orthogonality to working precision: Giraud, Langou and Rozloznik (2005), Computers and
/// Mathematics with Applications 50, 1069-1075. Products of the columns of Q, unlike those of X, lose no digits to the
/// columns' units or to their dependence on each other.
/// </remarks>
internal sealed class OrthonormalColumns
{
    private readonly double[,] _r;

    private OrthonormalColumns(double[][] q, double[,] r) => (Q, _r) = (q, r);

    /// <summary>The orthonormal columns.</summary>
    public double[][] Q { get; }

    /// <summary>The logarithm of the determinant of R, which is that of X'X halved.</summary>
    public double LogDeterminant => Enumerable.Range(0, Q.Length).Sum(j => Math.Log(_r[j, j]));

    /// <summary>Orthogonalizes columns that are known not to depend on each other.</summary>
    public static OrthonormalColumns Of(IReadOnlyList<DesignColumn> columns)
    {
        var q = columns.Select(column => column.Values.ToArray()).ToArray();
        var r = new double[q.Length, q.Length];
        for (var j = 0; j < q.Length; j++)
        {
            for (var pass = 0; pass < 2; pass++)
            {
                for (var k = 0; k < j; k++)
                {
                    var share = Dot(q[k], q[j]);
                    r[k, j] += share;
                    AddScaled(q[j], -share, q[k]);
                }
            }

            r[j, j] = Math.Sqrt(Dot(q[j], q[j]));
            for (var i = 0; i < q[j].Length; i++)
            {
                q[j][i] /= r[j, j];
            }
        }

        return new OrthonormalColumns(q, r);
    }

    /// <summary>The coefficients on X of coordinates along Q: solves R b = coordinates.</summary>
    public double[] Coefficients(ReadOnlySpan<double> coordinates)
    {
        var b = coordinates.ToArray();
        Solve(b);
        return b;
    }

    /// <summary>Replaces coordinates along Q by the coefficients on X.</summary>
    public void Solve(Span<double> b)
    {
        for (var i = b.Length - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < b.Length; k++)
            {
                b[i] -= _r[i, k] * b[k];
            }

            b[i] /= _r[i, i];
        }
    }

    /// <summary>The weights on coordinates along Q of weights on coefficients of X: solves R'z = weights.</summary>
    public double[] Whitened(IReadOnlyList<double> weights)
    {
        double[] z = [.. weights];
        for (var i = 0; i < z.Length; i++)
        {
            for (var k = 0; k < i; k++)
            {
                z[i] -= _r[k, i] * z[k];
            }

            z[i] /= _r[i, i];
        }

        return z;
    }

    /// <summary>The inner product of two vectors.</summary>
    /// <remarks>Summed in four lanes whatever the machine, so that the rounding is the same on every one.</remarks>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var lanes = Vector256<double>.Zero;
        var i = 0;
        for (; i + 4 <= a.Length; i += 4)
        {
            lanes += Vector256.Create(a[i..]) * Vector256.Create(b[i..]);
        }

        var sum = Vector256.Sum(lanes);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static void AddScaled(double[] target, double factor, double[] other)
    {
        for (var i = 0; i < target.Length; i++)
        {
            target[i] += factor * other[i];
        }
    }
}
