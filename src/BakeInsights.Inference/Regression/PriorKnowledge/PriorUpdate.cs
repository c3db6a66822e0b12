namespace BakeInsights.Inference;

/// <summary>Data and priors joined for a given residual spread.</summary>
/// <remarks>
/// With d the priors' means less the estimates, C = (X'X)^-1 and T the priors' variances: the estimates of the
/// coefficients with priors are expected to miss the priors' means with covariance S = T + s s C, and the data's belief
/// is moved by G d, G = s s C S^-1. The covariance is taken as a sum of squares, so that it can't cancel to less than
/// nothing. Algebra: Lindley and Smith (1972), Journal of the Royal Statistical Society B 34, 1-41; the form of the
/// covariance is Joseph's, in Bucy and Joseph (1968), Filtering for Stochastic Processes.
/// </remarks>
internal sealed class PriorUpdate
{
    private readonly LeastSquaresFit _data;
    private readonly NormalPrior[] _priors;
    private readonly int[] _places;
    private readonly double[] _misses;
    private readonly double[,] _unit;

    public PriorUpdate(LeastSquaresFit data, NormalPrior[] priors, int[] places)
    {
        (_data, _priors, _places) = (data, priors, places);
        _misses = [.. priors.Zip(places, (prior, j) => prior.Mean - data.Terms[j].Estimate)];
        var size = data.Terms.Count;

        // A perfect fit has no covariances; it is refused before they are asked for.
        var variance = data.ResidualSumOfSquares > 0
            ? data.ResidualStandardDeviation * data.ResidualStandardDeviation
            : 1;
        _unit = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j < size; j++)
            {
                _unit[i, j] = data.Covariance(i, j) / variance;
            }
        }
    }

    /// <summary>
    /// Whether the data tell the coefficients with priors from each other; the priors' own variances only help.
    /// </summary>
    public bool IsDetermined => Information.Of(Matrix((i, j) => _unit[_places[i], _places[j]])) is not null;

    /// <summary>Whether the variances stay numbers over the whole range of the spread.</summary>
    public bool IsInRange
    {
        get
        {
            var (low, high) = Range();
            return new[] { low, high }.All(logSpread =>
                Information.Of(Matrix((i, j) => Variance(Math.Exp(logSpread), i, j))) is { } expected
                && double.IsFinite(expected.LogDeterminant() + Distance(expected)));
        }
    }

    /// <summary>The range of ln spread outside which neither density is more than nothing.</summary>
    public (double Low, double High) Range()
    {
        // Below, the data's exponential falls beyond e^-100 within three units of ln s; above, the density falls with
        // at least one power of the spread, once the spread explains the widest miss.
        const double below = 3, above = 45;
        var spread = _data.ResidualStandardDeviation;
        var widest = _misses.Zip(_places, (d, j) => Math.Abs(d) / Math.Sqrt(_unit[j, j])).Max();
        return (Math.Log(spread) - below, Math.Log(Math.Max(spread, widest)) + above);
    }

    /// <summary>The logarithm of the density of ln spread from the data alone, up to a constant.</summary>
    public double LogDensityOfData(double logSpread) =>
        (-_data.ResidualDegreesOfFreedom * (logSpread - Math.Log(_data.ResidualStandardDeviation)))
        - (_data.ResidualDegreesOfFreedom / 2.0
            * Math.Exp(2 * (Math.Log(_data.ResidualStandardDeviation) - logSpread)));

    /// <summary>The logarithm of the density of ln spread from data and priors, up to a constant.</summary>
    public double LogDensity(double logSpread)
    {
        var expected = Expected(Math.Exp(logSpread));
        return LogDensityOfData(logSpread) - ((expected.LogDeterminant() + Distance(expected)) / 2);
    }

    /// <summary>The squared distance of estimates from priors' means against what is expected.</summary>
    public double Distance(double spread) => Distance(Expected(spread));

    /// <summary>The same for one prior by itself.</summary>
    public double Distance(double spread, int prior) =>
        _misses[prior] * _misses[prior] / Variance(spread, prior, prior);

    /// <summary>The factor of the covariance with which estimates are expected to miss the priors' means.</summary>
    public Information Expected(double spread) => Information.Of(Matrix((i, j) => Variance(spread, i, j)))
        ?? throw new InvalidOperationException("The columns with priors depend on each other.");

    /// <summary>Mean and variance of a combination of coefficients.</summary>
    /// <param name="weights">A weight for each column.</param>
    /// <param name="spread">The residual spread.</param>
    /// <param name="expected">The factor that belongs to it.</param>
    public (double Mean, double Variance) Combination(
        IReadOnlyList<double> weights, double spread, Information expected)
    {
        var size = weights.Count;
        var square = spread * spread;

        // The combination's gain: G'w = S^-1 (s s C w) at the coefficients with priors.
        double[] along = [.. Enumerable.Range(0, size).Select(
            i => Enumerable.Range(0, size).Sum(j => _unit[i, j] * weights[j]))];
        var gain = expected.Solve([.. _places.Select(j => square * along[j])]);
        var mean = weights.Zip(_data.Terms, (w, term) => w * term.Estimate).Sum()
            + gain.Zip(_misses, (g, d) => g * d).Sum();

        double[] left = [.. weights];
        for (var k = 0; k < gain.Length; k++)
        {
            left[_places[k]] -= gain[k];
        }

        var variance = 0.0;
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j < size; j++)
            {
                variance += square * left[i] * _unit[i, j] * left[j];
            }
        }

        variance = Math.Max(variance, 0);
        return (mean, variance + gain.Zip(_priors, (g, prior) => Square(g * prior.StandardDeviation)).Sum());
    }

    private double[,] Matrix(Func<int, int, double> at)
    {
        var matrix = new double[_places.Length, _places.Length];
        for (var i = 0; i < _places.Length; i++)
        {
            for (var j = 0; j < _places.Length; j++)
            {
                matrix[i, j] = at(i, j);
            }
        }

        return matrix;
    }

    private double Distance(Information expected) =>
        expected.Solve(_misses).Zip(_misses, (x, d) => x * d).Sum();

    private double Variance(double spread, int first, int second) =>
        (spread * spread * _unit[_places[first], _places[second]])
        + (first == second ? Square(_priors[first].StandardDeviation) : 0);

    private static double Square(double x) => x * x;
}
