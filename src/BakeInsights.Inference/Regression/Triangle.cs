namespace BakeInsights.Inference;

/// <summary>The upper triangular factor R of a design X: R'R = X'X. It carries all variances of a fit.</summary>
/// <remarks>
/// It is held and solved in doubled precision, whichever it was computed in: rounding it would cost as many digits as
/// the condition number has. Columns are not exchanged. So |R_jj| over the length of column j is the sine of the angle
/// between that column and the span of those before it, and the column that is reported as dependent is the later one,
/// whatever the data.
/// </remarks>
internal sealed class Triangle
{
    private readonly Doubled[] _elements;

    private Triangle(Doubled[] elements, double[] lengths) => (_elements, Lengths) = (elements, lengths);

    /// <summary>The lengths of the design's columns, which are those of the columns of R.</summary>
    public IReadOnlyList<double> Lengths { get; }

    /// <summary>The number of columns.</summary>
    public int Size => Lengths.Count;

    /// <summary>An element.</summary>
    public Doubled this[int row, int column] => _elements[(row * Size) + column];

    /// <summary>The leading triangle of a function that gives its elements.</summary>
    public static Triangle Of(int size, Func<int, int, Doubled> element)
    {
        var elements = new Doubled[size * size];
        var lengths = new double[size];
        for (var j = 0; j < size; j++)
        {
            for (var i = 0; i <= j; i++)
            {
                elements[(i * size) + j] = element(i, j);
                lengths[j] = double.Hypot(lengths[j], elements[(i * size) + j].High);
            }
        }

        return new Triangle(elements, lengths);
    }

    /// <summary>Solves R x = right-hand side.</summary>
    public Doubled[] Solve(ReadOnlySpan<Doubled> rightHandSide) => SolveLeading(rightHandSide, Size);

    /// <summary>Solves R'z = w, for which the variance of w'b is sigma squared times z'z.</summary>
    public Doubled[] SolveTransposed(ReadOnlySpan<Doubled> weights)
    {
        var z = new Doubled[Size];
        for (var i = 0; i < z.Length; i++)
        {
            var sum = weights[i];
            for (var k = 0; k < i; k++)
            {
                sum -= this[k, i] * z[k];
            }

            z[i] = sum / this[i, i];
        }

        return z;
    }

    /// <summary>The condition number of the design with its columns brought to equal length.</summary>
    /// <remarks>
    /// In the Frobenius norm, which is at most p times the usual one. Equal lengths are within a factor of the root of
    /// p of the best scaling: van der Sluis (1969), Numerische Mathematik 14, 14-23.
    /// </remarks>
    /// <returns>The number; infinite if the factor is singular.</returns>
    public double Condition()
    {
        var sum = 0.0;
        for (var j = 0; j < Size; j++)
        {
            var unit = new Doubled[j + 1];
            unit[j] = 1;
            var column = SolveLeading(unit, j + 1);
            for (var i = 0; i <= j; i++)
            {
                var scaled = column[i].High * Lengths[i];
                sum += scaled * scaled;
            }
        }

        return double.IsFinite(sum) ? Math.Sqrt(Size * sum) : double.PositiveInfinity;
    }

    /// <summary>
    /// The first column that is a combination of those before it, and the places of these; null if there is none.
    /// </summary>
    /// <remarks>
    /// Let c be the coefficients of the unit-length column j on the unit-length columns before it. Columns that are off
    /// by up to <paramref name="tolerance"/> times their length move column j against the combination by up to
    /// tolerance (1 + sum |c|). A column no farther than this from the span of the others can't be told from one in it.
    /// </remarks>
    public (int Column, int[] Earlier)? FirstDependence(double tolerance)
    {
        for (var j = 1; j < Size; j++)
        {
            var column = Enumerable.Range(0, j).Select(i => this[i, j]).ToArray();
            double[] shares = [.. SolveLeading(column, j).Select((c, k) => Math.Abs(c.High) * Lengths[k] / Lengths[j])];
            if (Math.Abs(this[j, j].High) <= tolerance * (1 + shares.Sum()) * Lengths[j])
            {
                // Common practice, no source: a share this small is rounding, half of the digits being safe.
                var negligible = Math.Sqrt(tolerance) * shares.Max();
                return (j, [.. Enumerable.Range(0, j).Where(k => shares[k] > negligible)]);
            }
        }

        return null;
    }

    private Doubled[] SolveLeading(ReadOnlySpan<Doubled> rightHandSide, int size)
    {
        var x = new Doubled[size];
        for (var i = size - 1; i >= 0; i--)
        {
            var sum = rightHandSide[i];
            for (var k = i + 1; k < size; k++)
            {
                sum -= this[i, k] * x[k];
            }

            x[i] = sum / this[i, i];
        }

        return x;
    }
}
