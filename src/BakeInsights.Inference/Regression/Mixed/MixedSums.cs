namespace BakeInsights.Inference;

/// <summary>The sums over groups that make the deviance and its derivatives at one relative covariance.</summary>
internal sealed class MixedSums
{
    private readonly int _width;
    private readonly int _size;
    private readonly double[] _products;
    private readonly double[][] _change;
    private readonly double[][] _bend;
    private readonly double[] _logChange;
    private readonly double[,] _logBend;
    private double _logDeterminant;

    /// <summary>Sums over all groups.</summary>
    public MixedSums(GroupReduction reduction, RelativeFactor factor)
    {
        _width = reduction.Width;
        _size = reduction.HasSlope ? 3 : 1;
        _products = [.. reduction.Within];
        _change = Tables(_size);
        _bend = Tables(_size * (_size + 1) / 2);
        _logChange = new double[_size];
        _logBend = new double[_size, _size];
        var weighted = new double[2 * _width];
        for (var g = 0; g < reduction.GroupCount; g++)
        {
            var weights = GroupWeights.Of(reduction.Triangles.AsSpan(3 * g, 3), factor);
            Add(reduction.Between.AsSpan(2 * g * _width, 2 * _width), weights, weighted);
        }
    }

    /// <summary>Solves for the coefficients and gathers the derivatives.</summary>
    public DevianceDerivatives Derivatives(bool restricted)
    {
        var p = _width - 1;
        var (inverse, logDeterminant) = SmallMatrix.Inverse(Block(_products), p);
        var coordinates = new double[p];
        for (var i = 0; i < p; i++)
        {
            for (var j = 0; j < p; j++)
            {
                coordinates[i] += inverse[(i * p) + j] * _products[(j * _width) + p];
            }
        }

        double[] contrast = [.. coordinates.Select(v => -v), 1];
        var residual = Quadratic(_products, contrast);
        var moved = _change.Select(table => Times(table, contrast)).ToArray();
        var change = _change.Select(Block).ToArray();
        var inverseChange = change.Select(table => SmallMatrix.Product(inverse, table, p)).ToArray();
        var residualChange = moved.Select(v => OrthonormalColumns.Dot(v, contrast)).ToArray();
        var residualBend = new double[_size, _size];
        for (var k = 0; k < _size; k++)
        {
            for (var l = 0; l < _size; l++)
            {
                var bend = _bend[Place(k, l)];
                residualBend[k, l] = Quadratic(bend, contrast)
                    - (2 * SmallMatrix.Quadratic(inverse, moved[k].AsSpan(0, p), moved[l].AsSpan(0, p)));
                if (restricted)
                {
                    _logBend[k, l] += SmallMatrix.TraceOfProduct(inverse, Block(bend), p)
                        - SmallMatrix.TraceOfProduct(inverseChange[k], inverseChange[l], p);
                }
            }

            _logChange[k] += restricted ? SmallMatrix.Trace(inverseChange[k], p) : 0;
        }

        return new DevianceDerivatives(
            coordinates, inverse, change, residual, residualChange, residualBend,
            _logDeterminant + (restricted ? logDeterminant : 0), _logChange, _logBend);
    }

    private static int Place(int k, int l) => k <= l ? Place(l) + k : Place(k) + l;

    private static int Place(int l) => l * (l + 1) / 2;

    private void Add(ReadOnlySpan<double> between, GroupWeights w, Span<double> weighted)
    {
        // The rows of T = R'B (Q'X, Q'y).
        var first = between[.._width];
        var second = between[_width..];
        var t0 = weighted[.._width];
        var t1 = weighted[_width..];
        for (var j = 0; j < _width; j++)
        {
            t0[j] = (w.Rb00 * first[j]) + (w.Rb01 * second[j]);
            t1[j] = (w.Rb10 * first[j]) + (w.Rb11 * second[j]);
        }

        for (var i = 0; i < _width; i++)
        {
            var (b0, b1) = ((w.B00 * first[i]) + (w.B01 * second[i]), (w.B01 * first[i]) + (w.B11 * second[i]));
            for (var j = 0; j < _width; j++)
            {
                var at = (i * _width) + j;
                _products[at] += (b0 * first[j]) + (b1 * second[j]);
                var p00 = t0[i] * t0[j];
                _change[0][at] -= p00;
                _bend[0][at] += 2 * w.N00 * p00;
                if (_size == 3)
                {
                    var p01 = (t0[i] * t1[j]) + (t1[i] * t0[j]);
                    var p11 = t1[i] * t1[j];
                    _change[1][at] -= p01;
                    _change[2][at] -= p11;
                    _bend[1][at] += (2 * w.N01 * p00) + (w.N00 * p01);
                    _bend[2][at] += 2 * ((w.N11 * p00) + (w.N01 * p01) + (w.N00 * p11));
                    _bend[3][at] += w.N01 * p01;
                    _bend[4][at] += (w.N11 * p01) + (2 * w.N01 * p11);
                    _bend[5][at] += 2 * w.N11 * p11;
                }
            }
        }

        _logDeterminant += w.LogDeterminant;
        w.AddLogDerivatives(_logChange, _logBend);
    }

    private double[][] Tables(int count) => [.. Enumerable.Range(0, count).Select(_ => new double[_width * _width])];

    /// <summary>The part of a table that concerns the columns, without the response.</summary>
    private double[] Block(double[] table)
    {
        var p = _width - 1;
        var block = new double[p * p];
        for (var i = 0; i < p; i++)
        {
            table.AsSpan(i * _width, p).CopyTo(block.AsSpan(i * p, p));
        }

        return block;
    }

    private double[] Times(double[] table, double[] vector) =>
        [.. Enumerable.Range(0, _width).Select(i => OrthonormalColumns.Dot(table.AsSpan(i * _width, _width), vector))];

    private double Quadratic(double[] table, double[] vector) => OrthonormalColumns.Dot(Times(table, vector), vector);
}
