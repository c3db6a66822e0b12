namespace BakeInsights.Inference;

/// <summary>The residuals of a model on its data, and their derivatives by the parameters.</summary>
internal sealed class NonlinearRows
{
    /// <summary>The step that balances the truncation of a central difference against rounding, relatively.</summary>
    private static readonly double CentralStep = Math.Cbrt(LeastSquares.Epsilon);

    private readonly NonlinearModel _model;
    private readonly double[][] _rows;
    private readonly double[] _response;
    private readonly int? _held;

    public NonlinearRows(NonlinearModel model, Design predictors, DesignColumn response)
    {
        _model = model;
        _rows = [.. Enumerable.Range(0, predictors.RowCount).Select(i => predictors.Row(i).ToArray())];
        _response = [.. response.Values];
    }

    private NonlinearRows(NonlinearRows rows, int held)
    {
        (_model, _rows, _response) = (rows._model, rows._rows, rows._response);
        _held = held;
    }

    /// <summary>The response.</summary>
    public IReadOnlyList<double> Response => _response;

    /// <summary>The number of parameters.</summary>
    public int Size => _model.Parameters.Count;

    /// <summary>
    /// How exact derivatives are, relatively: rounding of sums over rows for the model's own, and for differences what
    /// extrapolation leaves, by trial on functions with known derivatives.
    /// </summary>
    public double SlopeNoise => _model.HasSlopes ? 10 * _rows.Length * LeastSquares.Epsilon : 1e-11;

    /// <summary>The same rows with one parameter held: it has no slope, so no step moves it.</summary>
    public NonlinearRows Holding(int place) => new(this, place);

    /// <summary>Response minus model by row; null if some value or the sum of squares isn't finite.</summary>
    public double[]? Residuals(double[] point)
    {
        var residuals = new double[_rows.Length];
        var sum = 0.0;
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = _response[i] - _model.Value(point, _rows[i]);
            sum += residuals[i] * residuals[i];
        }

        return double.IsFinite(sum) ? residuals : null;
    }

    /// <summary>The derivatives of the model, one column a parameter; null if some isn't finite.</summary>
    /// <param name="point">The parameters.</param>
    /// <param name="typical">A size for each parameter, for where it is near 0.</param>
    public double[][]? Slopes(double[] point, double[] typical)
    {
        if (_model.HasSlopes)
        {
            return Own(point);
        }

        var columns = new double[Size][];
        for (var j = 0; j < Size; j++)
        {
            var step = CentralStep * Math.Max(Math.Abs(point[j]), typical[j]);
            columns[j] = j == _held
                ? new double[_rows.Length]
                : [.. _rows.Select(row => Difference(point, j, step, row))];
        }

        return AllFinite(columns);
    }

    /// <summary>
    /// The derivatives with as many digits as values allow: from central differences with falling steps, extrapolated
    /// to none. Ridders (1982), Accurate computation of F'(x) and F'(x) F''(x), Advances in Engineering Software 4,
    /// 75-76.
    /// </summary>
    /// <param name="point">The parameters.</param>
    /// <param name="widths">The largest step of each.</param>
    public double[][]? ExactSlopes(double[] point, double[] widths) => _model.HasSlopes
        ? Own(point)
        : AllFinite([.. Enumerable.Range(0, Size).Select(j =>
            _rows.Select(row => Extrapolated(point, j, widths[j], row)).ToArray())]);

    private double[][]? Own(double[] point)
    {
        var columns = Enumerable.Range(0, Size).Select(_ => new double[_rows.Length]).ToArray();
        for (var i = 0; i < _rows.Length; i++)
        {
            var slopes = _model.Slopes(point, _rows[i]);
            for (var j = 0; j < Size; j++)
            {
                columns[j][i] = j == _held ? 0 : slopes[j];
            }
        }

        return AllFinite(columns);
    }

    private double Difference(double[] point, int j, double step, double[] row)
    {
        var (high, low) = (point[j] + step, point[j] - step);
        var difference = (At(point, j, high, row) - At(point, j, low, row)) / (high - low);
        if (double.IsFinite(difference))
        {
            return difference;
        }

        // At the edge of where the model has values, to the side that has them.
        var here = _model.Value(point, row);
        var forward = (At(point, j, high, row) - here) / (high - point[j]);
        return double.IsFinite(forward) ? forward : (here - At(point, j, low, row)) / (point[j] - low);
    }

    private double Extrapolated(double[] point, int j, double width, double[] row)
    {
        const int levels = 10;
        const double shrink = 1.6;
        var (best, error) = (Difference(point, j, width, row), double.PositiveInfinity);
        double[] above = [best];
        for (var level = 1; level < levels; level++)
        {
            width /= shrink;
            var here = new double[level + 1];
            here[0] = Difference(point, j, width, row);
            var factor = shrink * shrink;
            for (var k = 1; k <= level; k++, factor *= shrink * shrink)
            {
                here[k] = here[k - 1] + ((here[k - 1] - above[k - 1]) / (factor - 1));
                var change = Math.Max(Math.Abs(here[k] - here[k - 1]), Math.Abs(here[k] - above[k - 1]));
                if (change < error)
                {
                    (best, error) = (here[k], change);
                }
            }

            above = here;
        }

        return best;
    }

    private double At(double[] point, int j, double value, double[] row)
    {
        double[] moved = [.. point];
        moved[j] = value;
        return _model.Value(moved, row);
    }

    private static double[][]? AllFinite(double[][] columns) =>
        columns.All(column => column.All(double.IsFinite)) ? columns : null;
}
