namespace BakeInsights.Inference;

/// <summary>
/// The triangular factor of the relative covariance between groups: that of (intercept, slope) over the residual
/// variance is L L' with L = ((A, 0), (B, C)). Without slopes B and C are 0.
/// </summary>
/// <remarks>
/// The deviance is smooth in A, B and C and the same for either sign of A with B, and of C, so the edge of zero
/// variance needs no constraint. Bates, Maechler, Bolker and Walker (2015), Fitting linear mixed-effects models using
/// lme4, Journal of Statistical Software 67(1), section 3.
/// </remarks>
internal readonly record struct RelativeFactor(double A, double B, double C)
{
    /// <summary>The elements of L L': the intercept's, the product's, the slope's.</summary>
    public (double Intercept, double Product, double Slope) Covariance => (A * A, A * B, (B * B) + (C * C));

    /// <summary>The derivatives of the elements by A, B and C: one row an element.</summary>
    public double[,] Jacobian(int size) => size == 1
        ? new[,] { { 2 * A } }
        : new[,] { { 2 * A, 0, 0 }, { B, A, 0 }, { 0, 2 * B, 2 * C } };

    /// <summary>The factor moved by a step.</summary>
    public RelativeFactor Moved(ReadOnlySpan<double> step, double share) => step.Length == 1
        ? this with { A = A + (share * step[0]) }
        : new(A + (share * step[0]), B + (share * step[1]), C + (share * step[2]));

    /// <summary>The gradient and the table of second derivatives by A, B and C from those by the elements.</summary>
    public (double[] Gradient, double[,] Bend) Chain(double[] gradient, double[,] bend)
    {
        var size = gradient.Length;
        var jacobian = Jacobian(size);
        var first = new double[size];
        var second = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < size; k++)
            {
                first[i] += jacobian[k, i] * gradient[k];
            }

            for (var j = 0; j < size; j++)
            {
                for (var k = 0; k < size; k++)
                {
                    for (var l = 0; l < size; l++)
                    {
                        second[i, j] += jacobian[k, i] * bend[k, l] * jacobian[l, j];
                    }
                }
            }
        }

        // A^2 and B^2 + C^2 bend by 2, A B by 1.
        second[0, 0] += 2 * gradient[0];
        if (size == 3)
        {
            second[0, 1] += gradient[1];
            second[1, 0] += gradient[1];
            second[1, 1] += 2 * gradient[2];
            second[2, 2] += 2 * gradient[2];
        }

        return (first, second);
    }

    /// <summary>The nearest factor of one direction only, and that of no variance.</summary>
    public RelativeFactor[] Edges(int size)
    {
        if (size == 1)
        {
            return [default];
        }

        // The first principal axis of ((p, q), (q, s)) times the root of its length.
        var (p, q, s) = Covariance;
        var root = double.Hypot(p - s, 2 * q);
        var length = (p + s + root) / 2;
        var angle = Math.Atan2(2 * q, p - s) / 2;
        var scale = Math.Sqrt(length);
        return [default, new(scale * Math.Cos(angle), scale * Math.Sin(angle), 0)];
    }
}
