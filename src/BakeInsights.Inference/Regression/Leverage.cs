using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>The projection on the columns, from the triangular factor.</summary>
internal static class Leverage
{
    /// <summary>The leverage of each row: the diagonal of the projection.</summary>
    public static double[] Of(WorkRows rows, Triangle triangle)
    {
        var leverage = new double[rows.Count];
        Parts.ForEach(rows.Count, (_, from, to) =>
        {
            var z = new Doubled[triangle.Size];
            for (var i = from; i < to; i++)
            {
                Coordinates(rows, triangle, i, z);
                foreach (var coordinate in z)
                {
                    leverage[i] += coordinate.High * coordinate.High;
                }

                // Rounding can carry a row that the fit must pass through just past 1.
                leverage[i] = Math.Min(leverage[i] * (rows.Weights?[i] ?? 1), 1);
            }
        });
        return leverage;
    }

    /// <summary>Columns at right angles that span the weighted columns, by row; their outer product projects.</summary>
    public static Matrix<double> Basis(WorkRows rows, Triangle triangle)
    {
        var basis = Matrix<double>.Build.Dense(rows.Count, triangle.Size);
        var z = new Doubled[triangle.Size];
        for (var i = 0; i < rows.Count; i++)
        {
            Coordinates(rows, triangle, i, z);
            var root = Math.Sqrt(rows.Weights?[i] ?? 1);
            for (var j = 0; j < z.Length; j++)
            {
                basis[i, j] = root * z[j].High;
            }
        }

        return basis;
    }

    private static void Coordinates(WorkRows rows, Triangle triangle, int row, Doubled[] z)
    {
        for (var j = 0; j < z.Length; j++)
        {
            var column = rows.Column(j);
            var left = Doubled.Sum(column.Span[row], column.LowSpan.IsEmpty ? 0 : column.LowSpan[row]);
            for (var k = 0; k < j; k++)
            {
                left -= triangle[k, j] * z[k];
            }

            z[j] = left / triangle[j, j];
        }
    }
}
