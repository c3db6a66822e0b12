namespace BakeInsights.Inference;

/// <summary>The convex hull of a data set in its factors: what lies between rows, and nothing beyond them.</summary>
/// <remarks>
/// A place is in the hull if it is a mean of rows with weights that are not negative. How far a line stays in the hull is
/// a linear program over those weights: Dantzig (1963), Linear Programming and Extensions; pivots by Bland (1977),
/// Mathematics of Operations Research 2, 103-107, whose rule can't go round in circles.
/// </remarks>
public sealed class ConvexRegion
{
    // All the way, but for what pivots cost in digits. Common practice, no source.
    private const double Rounding = 1e-9;

    private readonly double[][] _rows;
    private readonly double[] _scale;

    private ConvexRegion(double[][] rows, double[] scale) => (_rows, _scale) = (rows, scale);

    /// <summary>The region of rows.</summary>
    /// <param name="rows">A value for each factor by row; at least one row, one factor.</param>
    /// <exception cref="ArgumentException">There is no row or factor, rows differ in length, or a value isn't finite.</exception>
    public static ConvexRegion Of(IReadOnlyList<IReadOnlyList<double>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (rows.Count == 0 || rows[0].Count == 0 || rows.Any(row => row.Count != rows[0].Count || row.Any(value => !double.IsFinite(value))))
        {
            throw new ArgumentException("A region takes rows of equal length with finite values.", nameof(rows));
        }

        var factors = Enumerable.Range(0, rows[0].Count);
        double[] scale = [.. factors.Select(j => rows.Max(row => row[j]) - rows.Min(row => row[j])).Select(range => range > 0 ? range : 1)];
        return new ConvexRegion([.. rows.Select(row => row.ToArray())], scale);
    }

    /// <summary>Whether a place is in the region, its edge included.</summary>
    /// <exception cref="ArgumentException">The place has another number of factors.</exception>
    public bool Holds(IReadOnlyList<double> place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Way(place, place) is not null;
    }

    /// <summary>
    /// How far one can go from a place towards another without leaving the region: 1 all the way, 0 not at all. Null if the
    /// first place is itself outside.
    /// </summary>
    /// <exception cref="ArgumentException">A place has another number of factors.</exception>
    public double? Reach(IReadOnlyList<double> from, IReadOnlyList<double> to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return Holds(from) ? Way(from, to) : null;
    }

    // From outside, too, there may be a way into the region; who asks has made sure that it starts inside.
    private double? Way(IReadOnlyList<double> from, IReadOnlyList<double> to)
    {
        if (from.Count != _scale.Length || to.Count != _scale.Length)
        {
            throw new ArgumentException($"The region has {_scale.Length} factors.", nameof(to));
        }

        // Weights w of the rows and the way t, with sum of w (row - from) = t (to - from), sum of w = 1, t at most 1.
        var size = _scale.Length + 2;
        var columns = _rows.Length + 2;
        var table = new double[size, columns];
        var right = new double[size];
        for (var j = 0; j < _scale.Length; j++)
        {
            for (var row = 0; row < _rows.Length; row++)
            {
                table[j, row] = (_rows[row][j] - from[j]) / _scale[j];
            }

            table[j, _rows.Length] = -(to[j] - from[j]) / _scale[j];
        }

        for (var row = 0; row < _rows.Length; row++)
        {
            table[_scale.Length, row] = 1;
        }

        right[_scale.Length] = 1;
        (table[size - 1, _rows.Length], table[size - 1, _rows.Length + 1], right[size - 1]) = (1, 1, 1);
        return LinearProgram.Most(table, right, _rows.Length) is { } way ? (way > 1 - Rounding ? 1 : way) : null;
    }
}
