namespace BakeInsights.Inference;

/// <summary>What is believed of a linear model's coefficients by priors and data together.</summary>
public sealed class FullPriorFit : IFit
{
    private readonly GivenSpread[] _parts;

    internal FullPriorFit(
        IReadOnlyList<NormalPrior> priors, IEnumerable<GivenSpread> parts, IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<double> response)
    {
        Priors = [.. priors];
        _parts = [.. parts];
        Terms = [.. Priors.Select((prior, j) =>
        {
            var belief = Coefficient(j);
            return new Term(prior.Column, belief.Mean, belief.StandardDeviation!.Value, double.PositiveInfinity);
        })];
        Summary = new FitSummary(
            "linear regression with a prior of every coefficient and of the spread",
            response.Count,
            null,
            _parts.Sum(part => part.Weight * part.Spread),
            null,
            null,
            null);
        Rows = [.. response.Select((y, i) =>
        {
            var fitted = rows[i].Zip(Terms, (x, term) => x * term.Estimate).Sum();
            return new FitRow(i, y, fitted, y - fitted, null, null);
        })];
    }

    /// <summary>The priors, in the order of the columns.</summary>
    public IReadOnlyList<NormalPrior> Priors { get; }

    /// <summary>
    /// Mean and standard deviation of what is believed of each coefficient. Its distribution isn't quite normal; take
    /// intervals from <see cref="Coefficient"/>.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>The fit as a whole. The residual standard deviation is the mean of what is believed of it.</summary>
    public FitSummary Summary { get; }

    /// <summary>The rows. What is fitted is the mean of what is believed.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>What was believed of a coefficient before the data.</summary>
    /// <param name="column">The column, from 0.</param>
    public Belief Before(int column) => Belief.Normal(Priors[column].Mean, Priors[column].StandardDeviation);

    /// <summary>What is believed of a coefficient.</summary>
    /// <param name="column">The column, from 0.</param>
    public Belief Coefficient(int column) => Combination([.. Priors.Select((_, j) => j == column ? 1.0 : 0)]);

    /// <summary>What is believed of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column, not all zero.</param>
    /// <exception cref="ArgumentException">The number of weights isn't that of columns, or all are zero.</exception>
    public Belief Combination(IReadOnlyList<double> weights) => Mixture(weights, 0);

    /// <summary>What is believed of a single new response at a row of column values.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <exception cref="ArgumentException">The number of values isn't that of columns, or all are zero.</exception>
    public Belief Prediction(IReadOnlyList<double> row) => Mixture(row, 1);

    /// <summary>The value of one column at which the mean response is a given number, the others held.</summary>
    /// <param name="column">The column, from 0.</param>
    /// <param name="row">A value for each column; that of the asked one is where the search starts.</param>
    /// <param name="response">The mean response wanted.</param>
    /// <param name="level">The probability of the interval, between 0 and 1.</param>
    /// <exception cref="ArgumentException">The number of values isn't that of columns, or the level is not between 0 and 1.</exception>
    public PriorInverse ValueFor(int column, IReadOnlyList<double> row, double response, double level)
    {
        Check(row);
        return PriorInverse.Find(_parts, column, row, response, level);
    }

    private Belief Mixture(IReadOnlyList<double> weights, double shareOfSpread)
    {
        Check(weights);
        return weights.All(weight => weight == 0)
            ? throw new ArgumentException("All weights are zero.", nameof(weights))
            : Belief.Mixture([.. _parts.Select(part => new NormalPart(
                part.Weight,
                part.Mean.Zip(weights, (mean, weight) => mean * weight).Sum(),
                Math.Sqrt(part.Between(weights, weights) + (shareOfSpread * part.Spread * part.Spread))))]);
    }

    private void Check(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        if (weights.Count != Priors.Count)
        {
            throw new ArgumentException($"There are {weights.Count} weights for {Priors.Count} columns.", nameof(weights));
        }
    }
}
