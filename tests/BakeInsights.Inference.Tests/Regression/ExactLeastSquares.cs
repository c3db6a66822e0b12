namespace BakeInsights.Inference.Tests;

/// <summary>Least squares by exact rational arithmetic, from the doubles that a fit is given.</summary>
internal sealed class ExactLeastSquares
{
    private readonly Fraction[][] _inverse;
    private readonly Fraction _variance;

    /// <param name="columns">The columns by row.</param>
    /// <param name="response">The response.</param>
    public ExactLeastSquares(Fraction[][] columns, Fraction[] response)
    {
        var size = columns.Length;
        var normal = columns.Select((a, i) => columns.Select(b => Inner(a, b))
            .Concat(Enumerable.Range(0, size).Select(j => (Fraction)(i == j ? 1 : 0))).ToArray()).ToArray();
        Reduce(normal);
        _inverse = [.. normal.Select(row => row[size..])];
        Fraction[] sums = [.. columns.Select(column => Inner(column, response))];
        Fraction[] coefficients = [.. _inverse.Select(row => Inner(row, sums))];
        Coefficients = [.. coefficients.Select(b => b.ToDouble())];
        _variance = (Inner(response, response) - Inner(coefficients, sums)) / (response.Length - size);
    }

    public double[] Coefficients { get; }

    public double ResidualDeviation => Math.Sqrt(_variance.ToDouble());

    public double[] Deviations => [.. _inverse.Select((row, j) => Math.Sqrt((row[j] * _variance).ToDouble()))];

    public static Fraction Inner(Fraction[] a, Fraction[] b) =>
        a.Zip(b).Aggregate((Fraction)0, (sum, pair) => sum + (pair.First * pair.Second));

    /// <summary>Gauss-Jordan elimination of the left half; normal equations need no exchange of rows.</summary>
    private static void Reduce(Fraction[][] rows)
    {
        for (var k = 0; k < rows.Length; k++)
        {
            var pivot = rows[k][k];
            rows[k] = [.. rows[k].Select(value => value / pivot)];
            for (var i = 0; i < rows.Length; i++)
            {
                var factor = rows[i][k];
                if (i != k && !factor.IsZero)
                {
                    rows[i] = [.. rows[i].Zip(rows[k], (a, b) => a - (factor * b))];
                }
            }
        }
    }
}
