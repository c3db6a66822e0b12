namespace BakeInsights.Inference;

/// <summary>Fedorov's exchange of runs for candidates, along orthonormal columns.</summary>
internal sealed class ExchangeSearch
{
    /// <summary>
    /// What is added to every square at first, so that a start of dependent runs has an inverse; it is small beside a
    /// column's mean square of 1. Atkinson, Donev and Tobias (2007), section 12.4.
    /// </summary>
    private const double Start = 1e-3;

    /// <summary>An exchange must gain this much, relatively, or it is rounding. Common practice, no source.</summary>
    private const double LeastGain = 1e-9;

    private readonly double[][] _rows;
    private readonly double[] _earlier;
    private readonly double[] _moments;
    private readonly int _size;
    private readonly double _logScale;
    private readonly DesignCriterion _criterion;

    /// <summary>Makes the columns orthonormal over the candidates and the earlier runs together.</summary>
    public ExchangeSearch(Design candidates, Design? earlier, DesignCriterion criterion, Design? aims)
    {
        _criterion = criterion;
        _size = candidates.Columns.Count;
        var all = candidates.RowCount + (earlier?.RowCount ?? 0);
        var orthonormal = OrthonormalColumns.Of([.. candidates.Columns.Select((c, j) =>
            new DesignColumn(c.Name, [.. c.Values, .. earlier?.Columns[j].Values ?? []]))]);

        // Rows of mean square 1 a column.
        var root = Math.Sqrt(all);
        double[] Row(int i) => [.. orthonormal.Q.Select(column => root * column[i])];
        _rows = [.. Enumerable.Range(0, candidates.RowCount).Select(Row)];
        _logScale = (2 * orthonormal.LogDeterminant) - (_size * Math.Log(all));
        _earlier = Sum(Enumerable.Range(candidates.RowCount, all - candidates.RowCount).Select(Row));
        double[][] predicted = aims is null
            ? _rows
            : [.. Enumerable.Range(0, aims.RowCount).Select(i => orthonormal.Whitened(aims.Row(i)).Select(v => root * v).ToArray())];
        _moments = [.. Sum(predicted).Select(v => v / predicted.Length)];
    }

    /// <summary>
    /// The design that one start leads to, and its criterion; null if its columns depend on each other.
    /// </summary>
    public (int[] Rows, double Gain)? From(SeededStream stream, int runs)
    {
        var chosen = new int[runs];
        for (var i = 0; i < runs; i++)
        {
            chosen[i] = stream.Below(_rows.Length);
        }

        foreach (var added in new[] { Start, 0 })
        {
            if (!Exchange(chosen, added))
            {
                return null;
            }
        }

        var (logDeterminant, average) = Measures(chosen);
        return double.IsFinite(logDeterminant)
            ? (chosen, _criterion == DesignCriterion.Determinant ? logDeterminant : -Math.Log(average))
            : null;
    }

    /// <summary>The logarithm of the determinant in the given columns, and the average variance.</summary>
    public (double LogDeterminant, double Average) Measures(int[] chosen)
    {
        var (inverse, logDeterminant) = SmallMatrix.Inverse(Information(chosen, 0), _size);
        return (logDeterminant + _logScale, SmallMatrix.TraceOfProduct(inverse, _moments, _size));
    }

    /// <summary>Exchanges until nothing gains; false if the information has no inverse.</summary>
    private bool Exchange(int[] chosen, double added)
    {
        // Each exchange gains, so no design comes back; the bound is for rounding alone.
        const int Most = 10_000;
        for (var count = 0; count < Most; count++)
        {
            var (inverse, logDeterminant) = SmallMatrix.Inverse(Information(chosen, added), _size);
            if (!double.IsFinite(logDeterminant))
            {
                return false;
            }

            if (Best(chosen, inverse) is not var (place, candidate))
            {
                return true;
            }

            chosen[place] = candidate;
        }

        return true;
    }

    /// <summary>The exchange that gains most; null if none gains.</summary>
    private (int Place, int Candidate)? Best(int[] chosen, double[] inverse)
    {
        var times = _rows.Select(row => SmallMatrix.Times(inverse, row)).ToArray();
        var own = _rows.Select((row, i) => OrthonormalColumns.Dot(row, times[i])).ToArray();
        var averaging = _criterion == DesignCriterion.AveragePrediction;
        var weighted = averaging ? times.Select(t => SmallMatrix.Times(_moments, t)).ToArray() : [];
        var average = averaging ? SmallMatrix.TraceOfProduct(inverse, _moments, _size) : 0;
        var most = LeastGain;
        (int Place, int Candidate)? best = null;
        foreach (var place in Enumerable.Range(0, chosen.Length).DistinctBy(i => chosen[i]))
        {
            var i = chosen[place];
            for (var j = 0; j < _rows.Length; j++)
            {
                var cross = OrthonormalColumns.Dot(_rows[j], times[i]);

                // |M - x_i x_i' + x_j x_j'| over |M|.
                var ratio = ((1 + own[j]) * (1 - own[i])) + (cross * cross);
                var gain = averaging
                    ? ratio > LeastGain ? Fall(times, weighted, own, (i, j), cross, ratio) / average : 0
                    : ratio - 1;
                if (gain > most)
                {
                    (most, best) = (gain, (place, j));
                }
            }
        }

        return best;
    }

    /// <summary>
    /// What an exchange takes off the average variance, by the formula for an inverse changed by two rows.
    /// </summary>
    private static double Fall(
        double[][] times, double[][] weighted, double[] own, (int Out, int In) exchange, double cross, double ratio)
    {
        var (i, j) = exchange;
        var outOut = OrthonormalColumns.Dot(times[i], weighted[i]);
        var inIn = OrthonormalColumns.Dot(times[j], weighted[j]);
        var outIn = OrthonormalColumns.Dot(times[i], weighted[j]);
        return (((1 - own[i]) * inIn) + (2 * cross * outIn) - ((1 + own[j]) * outOut)) / ratio;
    }

    private double[] Information(int[] chosen, double added)
    {
        double[] information = [.. Sum(chosen.Select(i => _rows[i])).Zip(_earlier, (a, b) => a + b)];
        for (var j = 0; j < _size; j++)
        {
            information[(j * _size) + j] += added;
        }

        return information;
    }

    private double[] Sum(IEnumerable<double[]> rows)
    {
        var sum = new double[_size * _size];
        foreach (var row in rows)
        {
            for (var i = 0; i < _size; i++)
            {
                for (var j = 0; j < _size; j++)
                {
                    sum[(i * _size) + j] += row[i] * row[j];
                }
            }
        }

        return sum;
    }
}
