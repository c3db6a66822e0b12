namespace BakeInsights.Inference;

/// <summary>What has to be known of columns that pass by once, beside their triangular factor.</summary>
internal sealed class ColumnNotes(IReadOnlyList<string> names)
{
    private readonly double[] _first = new double[names.Count];
    private readonly double[] _largest = new double[names.Count];
    private readonly double[] _squares = new double[names.Count];
    private readonly long[] _missing = new long[names.Count];
    private readonly long[] _firstMissing = new long[names.Count];
    private readonly bool[] _varies = new bool[names.Count];
    private long _used;
    private double _mean;
    private double _squaredDistances;

    /// <summary>The number of rows, unusable ones included.</summary>
    public long Rows { get; private set; }

    /// <summary>The sum of the response's squared distances from its mean.</summary>
    public double SquaredDistances => _squaredDistances;

    /// <summary>Whether a column other than the response is constant and not zero.</summary>
    public bool HasConstant => Enumerable.Range(0, names.Count - 1).Any(j => !_varies[j] && _first[j] != 0);

    /// <summary>Whether the response differs between rows.</summary>
    public bool ResponseVaries => _varies[^1];

    /// <summary>The length of a column as it came.</summary>
    public double Length(int j) => Math.Sqrt(_squares[j]);

    /// <summary>Notes a row of the columns with the response last; false if a number of it is missing.</summary>
    public bool Add(ReadOnlySpan<double> row)
    {
        var usable = true;
        for (var j = 0; j < row.Length; j++)
        {
            if (!double.IsFinite(row[j]))
            {
                _firstMissing[j] = _missing[j]++ == 0 ? Rows : _firstMissing[j];
                usable = false;
            }
        }

        Rows++;
        for (var j = 0; j < row.Length && usable; j++)
        {
            _first[j] = _used == 0 ? row[j] : _first[j];
            _varies[j] |= row[j] != _first[j];
            _largest[j] = Math.Max(_largest[j], Math.Abs(row[j]));
            _squares[j] += row[j] * row[j];
        }

        if (usable)
        {
            _used++;
            var distance = row[^1] - _mean;
            _mean += distance / _used;
            _squaredDistances += distance * (row[^1] - _mean);
        }

        return usable;
    }

    /// <summary>Adds the notes of rows that follow.</summary>
    public void Join(ColumnNotes other)
    {
        for (var j = 0; j < names.Count; j++)
        {
            _firstMissing[j] = _missing[j] > 0 ? _firstMissing[j] : Rows + other._firstMissing[j];
            _missing[j] += other._missing[j];
            _varies[j] |= other._varies[j] || (_used > 0 && other._used > 0 && _first[j] != other._first[j]);
            _first[j] = _used > 0 ? _first[j] : other._first[j];
            _largest[j] = Math.Max(_largest[j], other._largest[j]);
            _squares[j] += other._squares[j];
        }

        Rows += other.Rows;
        if (other._used > 0)
        {
            var total = _used + other._used;
            var distance = other._mean - _mean;
            _mean += distance * other._used / total;
            _squaredDistances += other._squaredDistances + (distance * distance * _used * other._used / total);
            _used = total;
        }
    }

    /// <summary>The first column that can't be computed with; null if there is none.</summary>
    public FitProblem? Unusable() => Enumerable.Range(0, names.Count)
        .Select(j => _missing[j] > 0
            ? FitProblems.Missing(names[j], _missing[j], Rows, _firstMissing[j])
            : FitProblems.OutOfRange(names[j], _largest[j]))
        .FirstOrDefault(problem => problem is not null);
}
