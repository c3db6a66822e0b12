using MathNet.Numerics.Distributions;

namespace BakeInsights.Inference;

/// <summary>Priors of some coefficients whose standard deviations are known up to a common factor.</summary>
/// <remarks>
/// The factor has a half-Cauchy distribution with median 1 (Gelman 2006, Bayesian Analysis 1, 515-534), drawn as two
/// inverse gammas (Makalic and Schmidt 2016, IEEE Signal Processing Letters 23, 179-182).
/// </remarks>
internal sealed class PriorGroup
{
    private readonly NormalPrior[] _priors;
    private readonly int[] _places;
    private double _factor = 1;
    private double _helper = 1;

    public PriorGroup(IReadOnlyList<NormalPrior> priors, Design design)
    {
        _priors = [.. priors];
        _places = [.. priors.Select(prior => design.IndexOf(prior.Column))];
    }

    /// <summary>Adds what the priors say, with the factor as last drawn.</summary>
    public void AddTo(double[,] precision, double[] pull)
    {
        for (var k = 0; k < _priors.Length; k++)
        {
            var own = 1 / (_factor * _priors[k].StandardDeviation * _priors[k].StandardDeviation);
            precision[_places[k], _places[k]] += own;
            pull[_places[k]] += own * _priors[k].Mean;
        }
    }

    /// <summary>Draws the square of the factor, given the coefficients.</summary>
    public void Draw(double[] coefficients, Random random)
    {
        var squares = 0.0;
        for (var k = 0; k < _priors.Length; k++)
        {
            var z = (coefficients[_places[k]] - _priors[k].Mean) / _priors[k].StandardDeviation;
            squares += z * z;
        }

        _factor = Math.Max(Least, ((1 / _helper) + (squares / 2)) / Gamma.Sample(random, (_priors.Length + 1) / 2.0, 1));
        _helper = (1 + (1 / _factor)) / Gamma.Sample(random, 1, 1);
    }

    // The square of a thousandth: smaller factors change nothing and cost digits.
    private const double Least = 1e-6;
}
