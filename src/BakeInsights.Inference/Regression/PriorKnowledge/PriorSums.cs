namespace BakeInsights.Inference;

/// <summary>Coefficients given the residual spread: a normal distribution with a weight.</summary>
internal sealed record GivenSpread(double Weight, double Spread, double[] Mean, double[,] Covariance)
{
    /// <summary>The covariance of two combinations of coefficients.</summary>
    public double Between(IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        var sum = 0.0;
        for (var i = 0; i < Mean.Length; i++)
        {
            for (var j = 0; j < Mean.Length; j++)
            {
                sum += one[i] * Covariance[i, j] * other[j];
            }
        }

        return sum;
    }
}

/// <summary>The sums that join normal priors of all coefficients with data, for any residual spread.</summary>
/// <remarks>
/// All is counted from the prior's means: with T the priors' variances and r the response less what the priors' means
/// expect, the coefficients' precision is P = T^-1 + X'X / s s, and they lie P^-1 X'r / s s from the prior's means.
/// </remarks>
internal sealed class PriorSums
{
    private readonly IReadOnlyList<NormalPrior> _priors;
    private readonly double[,] _products;
    private readonly double[] _along;
    private readonly double _squares;
    private readonly int _count;

    public PriorSums(IReadOnlyList<NormalPrior> priors, IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<double> response)
    {
        var size = priors.Count;
        (_priors, _products, _along, _count) = (priors, new double[size, size], new double[size], rows.Count);
        for (var row = 0; row < rows.Count; row++)
        {
            var x = rows[row];
            var miss = response[row] - priors.Select((prior, j) => prior.Mean * x[j]).Sum();
            _squares += miss * miss;
            for (var i = 0; i < size; i++)
            {
                _along[i] += x[i] * miss;
                for (var j = 0; j < size; j++)
                {
                    _products[i, j] += x[i] * x[j];
                }
            }
        }
    }

    /// <summary>Whether all stays a number at this ln spread.</summary>
    public bool IsInRange(double logSpread) => PrecisionAt(Math.Exp(logSpread)) is not null && double.IsFinite(LogDensity(logSpread));

    /// <summary>The logarithm of the data's density at a ln spread, up to a constant.</summary>
    public double LogDensity(double logSpread)
    {
        var spread = Math.Exp(logSpread);
        var precision = Precision(spread);
        var square = spread * spread;
        var moved = precision.Solve([.. _along.Select(a => a / square)]);
        var explained = moved.Zip(_along, (m, a) => m * a).Sum();
        return (-_count * logSpread) - (precision.LogDeterminant() / 2) - ((_squares - explained) / square / 2);
    }

    /// <summary>The coefficients at a spread.</summary>
    public GivenSpread Given(double spread, double weight)
    {
        var precision = Precision(spread);
        var moved = precision.Solve([.. _along.Select(a => a / (spread * spread))]);
        return new GivenSpread(
            weight, spread, [.. _priors.Zip(moved, (prior, m) => prior.Mean + m)], precision.Inverse());
    }

    private Information Precision(double spread) =>
        PrecisionAt(spread) ?? throw new InvalidOperationException("The sums leave the range of double precision.");

    private Information? PrecisionAt(double spread)
    {
        var size = _priors.Count;
        var matrix = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j < size; j++)
            {
                var deviation = _priors[i].StandardDeviation;
                matrix[i, j] = (_products[i, j] / (spread * spread)) + (i == j ? 1 / (deviation * deviation) : 0);
            }
        }

        return Information.Of(matrix);
    }
}
