using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>The Gibbs sampler of <see cref="JointRegression"/>.</summary>
internal sealed class JointSampler
{
    private readonly JointPart[] _parts;
    private readonly Random _random;
    private readonly int _units;
    private readonly double[,] _residuals;
    private readonly int[][] _missing;
    private readonly int[][] _rowOf;
    private double[,] _precision;

    public JointSampler(JointPart[] parts, Random random)
    {
        (_parts, _random) = (parts, random);
        int[] all = [.. parts.SelectMany(part => part.Units).Distinct().Order()];
        _units = all.Length;
        _rowOf = [.. parts.Select(part => all.Select(unit => Array.IndexOf(part.Units, unit)).ToArray())];
        _missing = [.. _rowOf.Select(rows => Enumerable.Range(0, _units).Where(unit => rows[unit] < 0).ToArray())];
        _residuals = new double[parts.Length, _units];
        _precision = new double[parts.Length, parts.Length];
        for (var k = 0; k < parts.Length; k++)
        {
            _precision[k, k] = 1 / parts[k].StartVariance;
            Note(k);
        }
    }

    /// <summary>Draws everything anew, one thing after the other.</summary>
    public void Step()
    {
        for (var k = 0; k < _parts.Length; k++)
        {
            foreach (var unit in _missing[k])
            {
                _residuals[k, unit] = Expected(k, unit) + Normal.Sample(_random, 0, Math.Sqrt(1 / _precision[k, k]));
            }

            var expected = new double[_parts[k].Units.Length];
            for (var unit = 0; unit < _units; unit++)
            {
                if (_rowOf[k][unit] is >= 0 and var row)
                {
                    expected[row] = Expected(k, unit);
                }
            }

            _parts[k].Draw(expected, 1 / _precision[k, k], _random);
            Note(k);
        }

        DrawPrecision();
    }

    /// <summary>What was drawn last.</summary>
    public JointDraw Draw()
    {
        var covariance = Information.Of(_precision)!.Inverse();
        var unit = _random.Next(_units);
        return new JointDraw(
            [.. _parts.Select(part => part.Coefficients)],
            Root(covariance),
            [.. _parts.Select((part, k) => part.Varying.Length == 0 ? 0 : part.AddedBy(
                _rowOf[k][unit] is >= 0 and var row ? row : _random.Next(part.Units.Length)))]);
    }

    // What the residual of a response is expected to be, given the others of its unit.
    private double Expected(int k, int unit)
    {
        var sum = 0.0;
        for (var j = 0; j < _parts.Length; j++)
        {
            sum += j == k ? 0 : _precision[k, j] * _residuals[j, unit];
        }

        return -sum / _precision[k, k];
    }

    private void Note(int k)
    {
        for (var unit = 0; unit < _units; unit++)
        {
            if (_rowOf[k][unit] is >= 0 and var row)
            {
                _residuals[k, unit] = _parts[k].Residual(row);
            }
        }
    }

    // A Wishart matrix by its triangle (Bartlett 1933, Proceedings of the Royal Society of Edinburgh 53, 260-283).
    private void DrawPrecision()
    {
        var size = _parts.Length;
        var sums = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                for (var unit = 0; unit < _units; unit++)
                {
                    sums[i, j] += _residuals[i, unit] * _residuals[j, unit];
                }

                sums[j, i] = sums[i, j];
            }
        }

        var scale = Root(Information.Of(sums)!.Inverse());
        var freedom = _units + size - 1;
        var triangle = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            triangle[i, i] = Math.Sqrt(ChiSquared.Sample(_random, freedom - i));
            for (var j = 0; j < i; j++)
            {
                triangle[i, j] = Normal.Sample(_random, 0, 1);
            }
        }

        var half = Product(scale, triangle, false);
        _precision = Product(half, half, true);
    }

    private static double[,] Product(double[,] one, double[,] other, bool transposed)
    {
        var size = one.GetLength(0);
        var product = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j < size; j++)
            {
                for (var k = 0; k < size; k++)
                {
                    product[i, j] += one[i, k] * (transposed ? other[j, k] : other[k, j]);
                }
            }
        }

        return product;
    }

    /// <summary>The lower triangle whose product with its transpose is the matrix.</summary>
    private static double[,] Root(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var root = new double[size, size];
        for (var j = 0; j < size; j++)
        {
            for (var i = j; i < size; i++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= root[i, k] * root[j, k];
                }

                root[i, j] = i == j ? Math.Sqrt(sum) : sum / root[j, j];
            }
        }

        return root;
    }
}

/// <summary>One draw.</summary>
/// <param name="Coefficients">Coefficients by response.</param>
/// <param name="Root">The lower triangular root of the residuals' covariance.</param>
/// <param name="Added">What the columns that happen add to a new value of each response.</param>
internal sealed record JointDraw(double[][] Coefficients, double[,] Root, double[] Added);
