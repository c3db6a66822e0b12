namespace BakeInsights.Inference;

/// <summary>The few operations on small symmetric tables by rows that a mixed model needs.</summary>
internal static class SmallMatrix
{
    /// <summary>The inverse of a positive definite table and the logarithm of its determinant, by Cholesky.</summary>
    public static (double[] Inverse, double LogDeterminant) Inverse(double[] table, int size)
    {
        // The factor replaces the table's lower half.
        double[] factor = [.. table];
        var logDeterminant = 0.0;
        for (var j = 0; j < size; j++)
        {
            for (var i = j; i < size; i++)
            {
                var sum = factor[(i * size) + j]
                    - OrthonormalColumns.Dot(factor.AsSpan(i * size, j), factor.AsSpan(j * size, j));
                factor[(i * size) + j] = i == j ? Math.Sqrt(sum) : sum / factor[(j * size) + j];
            }

            logDeterminant += 2 * Math.Log(factor[(j * size) + j]);
        }

        var inverse = new double[size * size];
        var column = new double[size];
        for (var unit = 0; unit < size; unit++)
        {
            Array.Clear(column);
            column[unit] = 1;
            for (var i = 0; i < size; i++)
            {
                column[i] = (column[i] - OrthonormalColumns.Dot(factor.AsSpan(i * size, i), column.AsSpan(0, i)))
                    / factor[(i * size) + i];
            }

            for (var i = size - 1; i >= 0; i--)
            {
                for (var k = i + 1; k < size; k++)
                {
                    column[i] -= factor[(k * size) + i] * column[k];
                }

                column[i] /= factor[(i * size) + i];
            }

            column.CopyTo(inverse.AsSpan(unit * size, size));
        }

        return (inverse, logDeterminant);
    }

    /// <summary>The product of two square tables.</summary>
    public static double[] Product(double[] a, double[] b, int size)
    {
        var product = new double[size * size];
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < size; k++)
            {
                for (var j = 0; j < size; j++)
                {
                    product[(i * size) + j] += a[(i * size) + k] * b[(k * size) + j];
                }
            }
        }

        return product;
    }

    /// <summary>The sum of the diagonal.</summary>
    public static double Trace(double[] table, int size) => Enumerable.Range(0, size).Sum(i => table[(i * size) + i]);

    /// <summary>The sum of the diagonal of a product.</summary>
    public static double TraceOfProduct(double[] a, double[] b, int size)
    {
        var trace = 0.0;
        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < size; k++)
            {
                trace += a[(i * size) + k] * b[(k * size) + i];
            }
        }

        return trace;
    }

    /// <summary>The table times a vector.</summary>
    public static double[] Times(double[] table, ReadOnlySpan<double> vector)
    {
        var product = new double[vector.Length];
        for (var i = 0; i < product.Length; i++)
        {
            product[i] = OrthonormalColumns.Dot(table.AsSpan(i * product.Length, product.Length), vector);
        }

        return product;
    }

    /// <summary>The form a' M b.</summary>
    public static double Quadratic(double[] table, ReadOnlySpan<double> a, ReadOnlySpan<double> b) =>
        OrthonormalColumns.Dot(Times(table, b), a);
}
