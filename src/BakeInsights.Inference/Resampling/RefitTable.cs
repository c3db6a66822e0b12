using System.Runtime.Intrinsics;

namespace BakeInsights.Inference;

/// <summary>Refits least squares on chosen units of rows, by sums of products along orthonormal columns.</summary>
/// <remarks>
/// What is fitted is the residual of the whole data's fit, so a refit gives the departure of the coefficients from
/// those, and digits are lost neither to a large mean nor to the columns' units.
/// </remarks>
internal sealed class RefitTable
{
    /// <summary>
    /// A pivot of this share of its column's sum of squares is taken for 0: the resample's columns depend on each
    /// other. Ten digits are then gone of sixteen. Common practice, no source.
    /// </summary>
    private const double Negligible = 1e-10;

    private readonly OrthonormalColumns _columns;
    private readonly double[] _rows;
    private readonly int _stride;
    private readonly ResamplingUnits _units;
    private readonly double[] _coefficients;
    private readonly double _scale;
    private readonly double[] _errors;

    /// <summary>Makes the columns of a fit orthonormal.</summary>
    public RefitTable(LeastSquaresFit fit, ResamplingUnits units)
    {
        _columns = OrthonormalColumns.Of(fit.Design.Columns);
        _units = units;
        _coefficients = [.. fit.Terms.Select(term => term.Estimate)];
        var p = _coefficients.Length;

        // Rows of the columns and then the residual, padded with zeros to whole vectors of four.
        _stride = ((p + 1 + 3) / 4) * 4;
        _rows = new double[fit.Residuals.Count * _stride];
        var largest = fit.Residuals.Max(Math.Abs);
        _scale = largest > 0 ? largest : 1;
        for (var i = 0; i < fit.Residuals.Count; i++)
        {
            for (var j = 0; j < p; j++)
            {
                _rows[(i * _stride) + j] = _columns.Q[j][i];
            }

            _rows[(i * _stride) + p] = fit.Residuals[i] / _scale;
        }

        _errors = Errors(fit.Residuals.Count);
    }

    /// <summary>The number of coefficients.</summary>
    public int Size => _coefficients.Length;

    /// <summary>The number of units.</summary>
    public int UnitCount => _units.Count;

    /// <summary>The coefficients of one resample; false if its columns depend on each other.</summary>
    public bool Refit(SeededStream stream, Span<double> coefficients)
    {
        Span<double> sums = stackalloc double[(Size + 1) * _stride];
        sums.Clear();
        for (var draw = 0; draw < _units.Count; draw++)
        {
            Add(_units.Rows[stream.Below(_units.Count)], sums);
        }

        return Solve(sums, coefficients);
    }

    /// <summary>The coefficients of the fitted values with errors drawn anew.</summary>
    public void RefitErrors(SeededStream stream, Span<double> coefficients)
    {
        coefficients.Clear();
        for (var i = 0; i < _errors.Length; i++)
        {
            var error = _errors[stream.Below(_errors.Length)];
            for (var j = 0; j < Size; j++)
            {
                coefficients[j] += error * _rows[(i * _stride) + j];
            }
        }

        Finish(coefficients);
    }

    /// <summary>The coefficients without one unit; false if the rest's columns depend on each other.</summary>
    public bool Without(int unit, Span<double> coefficients)
    {
        Span<double> sums = stackalloc double[(Size + 1) * _stride];
        sums.Clear();
        Add(_units.Rows[unit], sums);
        for (var at = 0; at < sums.Length; at++)
        {
            sums[at] = -sums[at];
        }

        // Over all rows the columns' products are those of the unit table, and the residual's are 0.
        for (var j = 0; j < Size; j++)
        {
            sums[(j * _stride) + j]++;
        }

        return Solve(sums, coefficients);
    }

    private void Add(int[] rows, Span<double> sums)
    {
        foreach (var row in rows)
        {
            var values = _rows.AsSpan(row * _stride, _stride);
            for (var j = 0; j <= Size; j++)
            {
                var factor = Vector256.Create(values[j]);
                for (var k = 0; k <= j; k += 4)
                {
                    var target = sums.Slice((j * _stride) + k, 4);
                    var product = factor * Vector256.Create<double>(values[k..]);
                    (Vector256.Create<double>(target) + product).CopyTo(target);
                }
            }
        }
    }

    /// <summary>Solves by Cholesky in the lower half of the sums, whose last row is the right-hand side.</summary>
    private bool Solve(Span<double> sums, Span<double> coefficients)
    {
        Span<double> x = stackalloc double[Size];
        for (var j = 0; j < Size; j++)
        {
            var whole = sums[(j * _stride) + j];
            for (var i = j; i <= Size; i++)
            {
                var sum = sums[(i * _stride) + j];
                for (var k = 0; k < j; k++)
                {
                    sum -= sums[(i * _stride) + k] * sums[(j * _stride) + k];
                }

                if (i == j && !(sum > Negligible * whole))
                {
                    return false;
                }

                sums[(i * _stride) + j] = i == j ? Math.Sqrt(sum) : sum / sums[(j * _stride) + j];
            }
        }

        for (var i = Size - 1; i >= 0; i--)
        {
            x[i] = sums[(Size * _stride) + i];
            for (var k = i + 1; k < Size; k++)
            {
                x[i] -= sums[(k * _stride) + i] * x[k];
            }

            x[i] /= sums[(i * _stride) + i];
        }

        x.CopyTo(coefficients);
        Finish(coefficients);
        return true;
    }

    /// <summary>Turns coordinates along the orthonormal columns into coefficients.</summary>
    private void Finish(Span<double> coefficients)
    {
        _columns.Solve(coefficients);
        for (var j = 0; j < Size; j++)
        {
            coefficients[j] = _coefficients[j] + (_scale * coefficients[j]);
        }
    }

    /// <summary>
    /// The residuals, each brought to the errors' spread by the root of 1 less its leverage, about their mean: Davison
    /// and Hinkley (1997), Bootstrap Methods and their Application, section 6.2.3. A row that the fit must pass through
    /// has none.
    /// </summary>
    private double[] Errors(int rowCount)
    {
        var errors = new double[rowCount];
        for (var i = 0; i < rowCount; i++)
        {
            var row = _rows.AsSpan(i * _stride, Size);
            var free = 1 - OrthonormalColumns.Dot(row, row);
            errors[i] = free > Negligible ? _rows[(i * _stride) + Size] / Math.Sqrt(free) : 0;
        }

        var mean = errors.Average();
        return [.. errors.Select(e => e - mean)];
    }
}
