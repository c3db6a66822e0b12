using MathNet.Numerics.LinearAlgebra;

namespace BakeInsights.Inference;

/// <summary>Where the coefficients of a second-order surface y = b'x + x'B x stand in a fit.</summary>
internal sealed class SurfaceWeights
{
    private readonly int[] _linear;
    private readonly int[,] _second;
    private readonly int _size;

    /// <summary>Finds the columns by the names of <see cref="SurfaceColumns"/>.</summary>
    public SurfaceWeights(Design design, IReadOnlyList<string> factors)
    {
        _size = design.Names.Count;
        _linear = [.. factors.Select(design.IndexOf)];
        _second = new int[factors.Count, factors.Count];
        for (var i = 0; i < factors.Count; i++)
        {
            _second[i, i] = design.IndexOf(SurfaceColumns.Square(factors[i]));
            for (var j = i + 1; j < factors.Count; j++)
            {
                _second[i, j] = _second[j, i] = design.IndexOf(SurfaceColumns.Product(factors[i], factors[j]));
            }
        }
    }

    /// <summary>The number of factors.</summary>
    public int Count => _linear.Length;

    /// <summary>The vector b.</summary>
    public Vector<double> Linear(IReadOnlyList<double> coefficients) =>
        Vector<double>.Build.Dense(Count, i => coefficients[_linear[i]]);

    /// <summary>The matrix B.</summary>
    public Matrix<double> Second(IReadOnlyList<double> coefficients) => Matrix<double>.Build.Dense(
        Count, Count, (i, j) => coefficients[_second[i, j]] * (i == j ? 1 : 0.5));

    /// <summary>The weights that make the slope along a factor at a point.</summary>
    public double[] Slope(int factor, IReadOnlyList<double> point)
    {
        var weights = new double[_size];
        weights[_linear[factor]] = 1;
        for (var j = 0; j < Count; j++)
        {
            weights[_second[factor, j]] += point[j] * (j == factor ? 2 : 1);
        }

        return weights;
    }

    /// <summary>The weights that make the bend u'B u along a direction.</summary>
    public double[] Bend(Vector<double> direction)
    {
        var weights = new double[_size];
        for (var i = 0; i < Count; i++)
        {
            for (var j = i; j < Count; j++)
            {
                weights[_second[i, j]] += direction[i] * direction[j];
            }
        }

        return weights;
    }

    /// <summary>Where all slopes vanish; null if some direction has no bend beyond rounding.</summary>
    public double[]? Solve(IReadOnlyList<double> coefficients)
    {
        // Common practice, no source: a bend this small beside the largest is rounding, three digits being allowed.
        const double Negligible = 1e-13;
        var axes = Second(coefficients).Evd(Symmetricity.Symmetric);
        var bends = axes.EigenValues.Real();
        if (!(bends.AbsoluteMinimum() > Negligible * bends.AbsoluteMaximum()))
        {
            return null;
        }

        var along = axes.EigenVectors.TransposeThisAndMultiply(Linear(coefficients));
        var point = axes.EigenVectors * along.PointwiseDivide(-2 * bends);
        return point.All(double.IsFinite) ? point.ToArray() : null;
    }
}
