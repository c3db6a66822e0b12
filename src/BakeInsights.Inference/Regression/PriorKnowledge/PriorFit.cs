using System.Globalization;
using MathNet.Numerics;

namespace BakeInsights.Inference;

/// <summary>A linear regression with prior knowledge of some coefficients.</summary>
public sealed class PriorFit : IFit
{
    /// <summary>
    /// From how many residual degrees of freedom intervals hold the truth as often as they say, where it comes from the
    /// prior. From the simulation tabled in docs/inference.md.
    /// </summary>
    private const int AdvisedFreedom = 7;

    private readonly PriorUpdate _update;
    private readonly (double Spread, double Weight, Information Expected)[] _spreads;

    internal PriorFit(LeastSquaresFit data, PriorUpdate update, NormalPrior[] priors, int[] places)
    {
        DataAlone = data;
        _update = update;
        var (low, high) = _update.Range();
        _spreads = [.. SpreadGrid.Of(_update.LogDensity, low, high)
            .Select(s => (s.Spread, s.Weight, _update.Expected(s.Spread)))];
        var spreadsOfData = SpreadGrid.Of(_update.LogDensityOfData, low, high);

        PriorTerm Coefficient(Term term, int j)
        {
            var k = Array.IndexOf(places, j);
            return new PriorTerm(
                term.Name,
                k < 0 ? null : Belief.Normal(priors[k].Mean, priors[k].StandardDeviation),
                Belief.Student(term),
                Combination([.. data.Terms.Select((_, i) => i == j ? 1.0 : 0)]),
                k < 0 ? null : new PriorConflict(Tail(spreadsOfData, s => _update.Distance(s, k), 1)));
        }

        Coefficients = Array.AsReadOnly([.. data.Terms.Select(Coefficient)]);
        JointConflict = new PriorConflict(Tail(spreadsOfData, s => _update.Distance(s), priors.Length));
        Terms = Array.AsReadOnly([.. Coefficients.Select(c => new Term(
            c.Name, c.Together.Mean, c.Together.StandardDeviation!.Value, double.PositiveInfinity))]);
        Caveats = Array.AsReadOnly(FindCaveats(priors.Length).ToArray());
        Summary = new FitSummary(
            "linear regression with prior knowledge",
            data.N,
            data.ResidualDegreesOfFreedom,
            _spreads.Sum(s => s.Weight * s.Spread),
            null,
            null,
            null);
        Rows = Array.AsReadOnly([.. data.Response.Select((y, i) =>
        {
            var fitted = data.Design.Row(i).Zip(Terms, (x, term) => x * term.Estimate).Sum();
            return new FitRow(i, y, fitted, y - fitted, null, null);
        })]);
    }

    /// <summary>The least-squares fit, which is what the data say by themselves.</summary>
    public LeastSquaresFit DataAlone { get; }

    /// <summary>Each coefficient by prior, by data, and by both, in the order of the design's columns.</summary>
    public IReadOnlyList<PriorTerm> Coefficients { get; }

    /// <summary>
    /// Whether the priors, taken together, and the data disagree: the probability of estimates so far from the priors'
    /// means, averaged over the spreads that the data allow.
    /// </summary>
    /// <remarks>
    /// The check of a prior by the prior predictive probability of what is observed is Box's (1980), Sampling and
    /// Bayes' inference in scientific modelling and robustness, Journal of the Royal Statistical Society A 143, 383-430;
    /// that it is to be made on the sufficient statistic, here the estimates, Evans and Moshonov's (2006), Checking for
    /// prior-data conflict, Bayesian Analysis 1, 893-914.
    /// </remarks>
    public PriorConflict JointConflict { get; }

    /// <summary>
    /// Mean and standard deviation of each coefficient by both together. Their distribution isn't quite normal; take
    /// intervals from <see cref="Coefficients"/>.
    /// </summary>
    public IReadOnlyList<Term> Terms { get; }

    /// <summary>The fit as a whole. The residual standard deviation is the mean of what is believed of it.</summary>
    public FitSummary Summary { get; }

    /// <summary>The rows. What is fitted is the mean by both together.</summary>
    public IReadOnlyList<FitRow> Rows { get; }

    /// <summary>What to bear in mind when using the fit, each a sentence; empty if nothing.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>What is believed, by both together, of a linear combination of the coefficients.</summary>
    /// <param name="weights">A weight for each column, not all zero.</param>
    /// <exception cref="ArgumentException">The number of weights isn't that of columns, or all are zero.</exception>
    public Belief Combination(IReadOnlyList<double> weights) => OnGrid(weights, 0);

    /// <summary>What is believed, by both together, of a single new response at a row of column values.</summary>
    /// <param name="row">A value for each column, the constant included.</param>
    /// <exception cref="ArgumentException">The number of values isn't that of columns, or all are zero.</exception>
    public Belief Prediction(IReadOnlyList<double> row) => OnGrid(row, 1);

    private Belief OnGrid(IReadOnlyList<double> weights, double shareOfSpread) =>
        Belief.Mixture(Parts(weights, shareOfSpread));

    private NormalPart[] Parts(IReadOnlyList<double> weights, double shareOfSpread)
    {
        ArgumentNullException.ThrowIfNull(weights);
        if (weights.Count != DataAlone.Terms.Count)
        {
            throw new ArgumentException(
                $"There are {weights.Count} weights for {DataAlone.Terms.Count} columns.", nameof(weights));
        }

        return weights.All(w => w == 0)
            ? throw new ArgumentException("All weights are zero.", nameof(weights))
            : [.. _spreads.Select(s =>
            {
                var (mean, variance) = _update.Combination(weights, s.Spread, s.Expected);
                return new NormalPart(
                    s.Weight, mean, Math.Sqrt(variance + (shareOfSpread * s.Spread * s.Spread)));
            })];
    }

    private IEnumerable<string> FindCaveats(int priors)
    {
        foreach (var (name, conflict) in Coefficients.Select(c => (c.Name, c.Conflict)))
        {
            if (conflict is { IsConflict: true })
            {
                yield return Disagree($"the prior of {name}", conflict);
            }
        }

        if (priors > 1 && JointConflict.IsConflict)
        {
            yield return Disagree("the priors together", JointConflict);
        }

        if (DataAlone.ResidualDegreesOfFreedom < AdvisedFreedom)
        {
            yield return $"With {DataAlone.N} rows for {DataAlone.Terms.Count} columns the intervals hold the truth a "
                + $"little less often than they say; {DataAlone.Terms.Count + AdvisedFreedom} rows are advised.";
        }
    }

    private static string Disagree(string what, PriorConflict conflict) => string.Create(
        CultureInfo.InvariantCulture,
        $"The data disagree with {what} (p = {conflict.PValue:G2}), so both together suit neither.");

    /// <summary>The mean, over spreads, of the upper tail of the chi-squared distribution.</summary>
    private static double Tail(
        IReadOnlyList<(double Spread, double Weight)> spreads, Func<double, double> distance, int freedom) =>
        Math.Min(spreads.Sum(s => s.Weight * SpecialFunctions.GammaUpperRegularized(
            freedom / 2.0, distance(s.Spread) / 2)), 1);
}
