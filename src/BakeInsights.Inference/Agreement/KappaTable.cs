namespace BakeInsights.Inference;

/// <summary>The shares of a table of two raters, with weights of agreement between 0 and 1.</summary>
internal sealed class KappaTable
{
    private readonly int _size;
    private readonly double[,] _share;
    private readonly double[,] _weight;
    private readonly double[] _rows;
    private readonly double[] _columns;
    private readonly int _count;

    /// <summary>Takes counts as shares.</summary>
    public KappaTable(int[,] counts, int count, KappaWeighting weighting)
    {
        (_size, _count) = (counts.GetLength(0), count);
        (_share, _weight) = (new double[_size, _size], new double[_size, _size]);
        (_rows, _columns) = (new double[_size], new double[_size]);
        for (var i = 0; i < _size; i++)
        {
            for (var j = 0; j < _size; j++)
            {
                _share[i, j] = (double)counts[i, j] / count;
                _rows[i] += _share[i, j];
                _columns[j] += _share[i, j];
                var distance = Math.Abs(i - j) / (_size - 1.0);
                _weight[i, j] = weighting switch
                {
                    KappaWeighting.None => i == j ? 1 : 0,
                    KappaWeighting.Linear => 1 - distance,
                    _ => 1 - (distance * distance),
                };
            }
        }
    }

    /// <summary>Kappa and its standard errors; null if chance alone brings full agreement.</summary>
    public (double Kappa, double Error, double ChanceError, double Observed, double Chance)? Solve()
    {
        var observed = Sum((i, j) => _share[i, j] * _weight[i, j]);
        var chance = Sum((i, j) => _rows[i] * _columns[j] * _weight[i, j]);
        if (_rows.Zip(_columns, (r, c) => r * c).Any(product => product == 1))
        {
            return null;
        }

        // The mean weights of each rater's categories, against the other's shares.
        var rowWeight = Enumerable.Range(0, _size)
            .Select(i => Enumerable.Range(0, _size).Sum(j => _columns[j] * _weight[i, j])).ToArray();
        var columnWeight = Enumerable.Range(0, _size)
            .Select(j => Enumerable.Range(0, _size).Sum(i => _rows[i] * _weight[i, j])).ToArray();
        var kappa = (observed - chance) / (1 - chance);
        var spread = Sum((i, j) => _share[i, j] * Square(
            _weight[i, j] - ((rowWeight[i] + columnWeight[j]) * (1 - kappa)))) - Square(kappa - (chance * (1 - kappa)));
        var chanceSpread = Sum((i, j) => _rows[i] * _columns[j] * Square(
            _weight[i, j] - (rowWeight[i] + columnWeight[j]))) - Square(chance);
        return (kappa, Root(spread), Root(chanceSpread), observed, chance);

        double Root(double variance) => Math.Sqrt(Math.Max(variance, 0) / _count) / (1 - chance);
    }

    private static double Square(double x) => x * x;

    private double Sum(Func<int, int, double> term) =>
        Enumerable.Range(0, _size).Sum(i => Enumerable.Range(0, _size).Sum(j => term(i, j)));
}
