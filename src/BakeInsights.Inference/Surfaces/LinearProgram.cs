namespace BakeInsights.Inference;

/// <summary>The largest value of one variable that linear equations in variables above zero allow.</summary>
internal sealed class LinearProgram
{
    /// <summary>What counts as zero in a table whose numbers are about 1. Common practice, no source.</summary>
    private const double Tolerance = 1e-9;

    private readonly double[,] _table;
    private readonly double[] _right;
    private readonly int[] _basis;
    private readonly int _columns;

    private LinearProgram(double[,] table, double[] right)
    {
        (_table, _right) = (table, right);
        _columns = table.GetLength(1);
        _basis = [.. Enumerable.Range(_columns, right.Length)];
    }

    /// <summary>The largest value of a variable; null if no values meet the equations.</summary>
    /// <param name="table">The equations' coefficients, a row each; it is used up.</param>
    /// <param name="right">Their right-hand sides, not negative.</param>
    /// <param name="variable">The variable, bounded by the equations.</param>
    public static double? Most(double[,] table, double[] right, int variable)
    {
        var program = new LinearProgram(table, right);
        var rows = right.Length;

        // First the values that the equations lack, one artificial variable each, are brought to nothing.
        var price = new double[program._columns];
        for (var j = 0; j < price.Length; j++)
        {
            for (var i = 0; i < rows; i++)
            {
                price[j] += table[i, j];
            }
        }

        program.Climb(price);
        if (program._basis.Select((column, row) => column >= program._columns ? program._right[row] : 0).Sum() > Tolerance)
        {
            return null;
        }

        program.DriveOut();
        var gain = new double[program._columns];
        gain[variable] = 1;
        for (var row = 0; row < rows; row++)
        {
            if (program._basis[row] == variable)
            {
                for (var j = 0; j < gain.Length; j++)
                {
                    gain[j] -= table[row, j];
                }
            }
        }

        program.Climb(gain);
        var place = Array.IndexOf(program._basis, variable);
        return place < 0 ? 0 : Math.Max(0, program._right[place]);
    }

    private void Climb(double[] price)
    {
        while (Array.FindIndex(price, p => p > Tolerance) is >= 0 and var column)
        {
            var row = Leaving(column);
            if (row < 0)
            {
                return;
            }

            Pivot(row, column, price);
        }
    }

    private int Leaving(int column)
    {
        var (best, least) = (-1, double.PositiveInfinity);
        for (var row = 0; row < _right.Length; row++)
        {
            if (_table[row, column] > Tolerance)
            {
                var ratio = _right[row] / _table[row, column];
                if (ratio < least - Tolerance || (ratio <= least + Tolerance && _basis[row] < _basis[best]))
                {
                    (best, least) = (row, Math.Min(ratio, least));
                }
            }
        }

        return best;
    }

    // An artificial variable that is still there, at nothing, must not grow: another takes its place, or its row is empty.
    private void DriveOut()
    {
        for (var row = 0; row < _right.Length; row++)
        {
            if (_basis[row] < _columns)
            {
                continue;
            }

            for (var column = 0; column < _columns; column++)
            {
                if (Math.Abs(_table[row, column]) > Tolerance)
                {
                    Pivot(row, column, null);
                    break;
                }
            }
        }
    }

    private void Pivot(int row, int column, double[]? price)
    {
        var pivot = _table[row, column];
        for (var j = 0; j < _columns; j++)
        {
            _table[row, j] /= pivot;
        }

        _right[row] /= pivot;
        for (var i = 0; i < _right.Length; i++)
        {
            var factor = _table[i, column];
            if (i == row || factor == 0)
            {
                continue;
            }

            for (var j = 0; j < _columns; j++)
            {
                _table[i, j] -= factor * _table[row, j];
            }

            _right[i] = Math.Max(0, _right[i] - (factor * _right[row]));
        }

        if (price is not null)
        {
            var factor = price[column];
            for (var j = 0; j < _columns; j++)
            {
                price[j] -= factor * _table[row, j];
            }
        }

        _basis[row] = column;
    }
}
