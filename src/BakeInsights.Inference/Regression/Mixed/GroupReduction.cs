namespace BakeInsights.Inference;

/// <summary>
/// All that a mixed model needs of its rows: for each group at most two rows that hold what the group's own intercept
/// and slope can take up, and one table of products of what is left within groups. The work of every later step goes
/// with the number of groups, not of rows.
/// </summary>
/// <remarks>
/// With Z = Q R for the group's constant and slope columns, V = I + Z P Z' leaves what is orthogonal to Q as it is, and
/// acts on Q'X and Q'y as I + R P R'. Sums are of squares only, so a spread between groups however large costs no
/// digits. The idea of reducing groups by QR is that of Pinheiro and Bates (2000), Mixed-Effects Models in S and
/// S-PLUS, section 2.2.
/// </remarks>
internal sealed class GroupReduction
{
    /// <summary>The last column is the response.</summary>
    private GroupReduction(int width, bool hasSlope, double[] triangles, double[] between, double[] within) =>
        (Width, HasSlope, Triangles, Between, Within) = (width, hasSlope, triangles, between, within);

    /// <summary>The number of columns, the response included.</summary>
    public int Width { get; }

    /// <summary>Whether each group has a slope of its own besides its intercept.</summary>
    public bool HasSlope { get; }

    /// <summary>For each group the three numbers of R: its first row, then the last of its second row.</summary>
    public double[] Triangles { get; }

    /// <summary>For each group two rows of all columns: what its intercept and its slope take up.</summary>
    public double[] Between { get; }

    /// <summary>The sums of products within groups, a square table by rows.</summary>
    public double[] Within { get; }

    /// <summary>The number of groups.</summary>
    public int GroupCount => Triangles.Length / 3;

    /// <summary>How many of a group's two rows hold anything, over all groups.</summary>
    public int GroupColumnCount => Enumerable.Range(0, GroupCount).Sum(g => Triangles[(3 * g) + 2] > 0 ? 2 : 1);

    /// <summary>Reduces the columns and the response, which are not changed.</summary>
    /// <param name="columns">The columns, the response last.</param>
    /// <param name="groups">The groups' rows.</param>
    /// <param name="slope">The column with a slope by group; null if there is none.</param>
    public static GroupReduction Of(double[][] columns, int[][] groups, double[]? slope)
    {
        var width = columns.Length;
        var triangles = new double[3 * groups.Length];
        var between = new double[2 * width * groups.Length];
        var within = new double[width * width];
        var largest = groups.Max(rows => rows.Length);
        var block = new double[width * largest];
        var direction = new double[largest];
        for (var g = 0; g < groups.Length; g++)
        {
            var rows = groups[g];
            for (var j = 0; j < width; j++)
            {
                for (var i = 0; i < rows.Length; i++)
                {
                    block[(j * largest) + i] = columns[j][rows[i]];
                }
            }

            // The group's constant, as a vector of unit length.
            var unit = direction.AsSpan(0, rows.Length);
            var root = Math.Sqrt(rows.Length);
            unit.Fill(1 / root);
            triangles[3 * g] = root;
            Split(block, largest, unit, between.AsSpan(2 * g * width, width));
            if (slope is not null)
            {
                var mean = rows.Average(i => slope[i]);
                for (var i = 0; i < rows.Length; i++)
                {
                    unit[i] = slope[rows[i]] - mean;
                }

                triangles[(3 * g) + 1] = mean * root;
                triangles[(3 * g) + 2] = Normalize(unit, rows.Max(i => Math.Abs(slope[i])));
                if (triangles[(3 * g) + 2] > 0)
                {
                    Split(block, largest, unit, between.AsSpan(((2 * g) + 1) * width, width));
                }
            }

            AddProducts(block, largest, rows.Length, within, width);
        }

        return new GroupReduction(width, slope is not null, triangles, between, within);
    }

    /// <summary>Takes out of every column its part along a direction, and gives the parts.</summary>
    private static void Split(double[] block, int stride, ReadOnlySpan<double> unit, Span<double> parts)
    {
        for (var j = 0; j < parts.Length; j++)
        {
            var column = block.AsSpan(j * stride, unit.Length);
            for (var pass = 0; pass < 2; pass++)
            {
                var part = OrthonormalColumns.Dot(column, unit);
                parts[j] += part;
                for (var i = 0; i < unit.Length; i++)
                {
                    column[i] -= part * unit[i];
                }
            }
        }
    }

    /// <summary>Scales to unit length and gives the length; 0 if it is rounding of the given magnitude.</summary>
    private static double Normalize(Span<double> vector, double magnitude)
    {
        var length = Math.Sqrt(OrthonormalColumns.Dot(vector, vector));
        if (length <= 4 * vector.Length * LeastSquares.Epsilon * magnitude)
        {
            return 0;
        }

        foreach (ref var v in vector)
        {
            v /= length;
        }

        return length;
    }

    private static void AddProducts(double[] block, int stride, int rows, double[] within, int width)
    {
        for (var j = 0; j < width; j++)
        {
            for (var k = 0; k <= j; k++)
            {
                var product = OrthonormalColumns.Dot(block.AsSpan(j * stride, rows), block.AsSpan(k * stride, rows));
                within[(j * width) + k] += product;
                if (k < j)
                {
                    within[(k * width) + j] += product;
                }
            }
        }
    }
}
