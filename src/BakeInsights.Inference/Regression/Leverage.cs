namespace BakeInsights.Inference;

/// <summary>The diagonal of the projection on the columns, from the triangular factor.</summary>
internal static class Leverage
{
    /// <summary>The leverage of each row.</summary>
    public static double[] Of(WorkRows rows, Triangle triangle)
    {
        var leverage = new double[rows.Count];
        Parts.ForEach(rows.Count, (_, from, to) =>
        {
            var z = new Doubled[triangle.Size];
            for (var i = from; i < to; i++)
            {
                leverage[i] = Math.Min(SquaredLength(rows, triangle, i, z) * (rows.Weights?[i] ?? 1), 1);
            }
        });
        return leverage;
    }

    private static double SquaredLength(WorkRows rows, Triangle triangle, int row, Doubled[] z)
    {
        var total = 0.0;
        for (var j = 0; j < z.Length; j++)
        {
            var column = rows.Column(j);
            var left = Doubled.Sum(column.Span[row], column.LowSpan.IsEmpty ? 0 : column.LowSpan[row]);
            for (var k = 0; k < j; k++)
            {
                left -= triangle[k, j] * z[k];
            }

            z[j] = left / triangle[j, j];
            total += z[j].High * z[j].High;
        }

        return total;
    }
}
