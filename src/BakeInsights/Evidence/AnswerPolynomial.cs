using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// An answer written out in dough temperature and hydration, every other setting at the typical dough's: enough for
/// whoever has no fit at hand, a script on a page say, to work out any dough and its interval.
/// </summary>
/// <remarks>
/// With m the values of the terms for a dough, the result is m'b and the interval of one more bake is
/// m'b ± t √(m'Cm + s²), as <see cref="LeastSquaresFit.PredictionInterval"/> has it. Where the fit is one of logarithms,
/// all three are exponents of e.
/// </remarks>
/// <param name="Terms">The terms with their coefficients b, each pair of powers once.</param>
/// <param name="Covariance">The covariance C of the coefficients, row by row.</param>
/// <param name="ResidualSd">The standard deviation s of single bakes about the fit.</param>
/// <param name="StudentQuantile">The quantile t of Student's distribution for <see cref="ModelAnswer.Level"/>.</param>
/// <param name="IsOfLogarithms">Whether the fit is one of the result's natural logarithm.</param>
public sealed record AnswerPolynomial(
    IReadOnlyList<PolynomialTerm> Terms,
    IReadOnlyList<IReadOnlyList<double>> Covariance,
    double ResidualSd,
    double StudentQuantile,
    bool IsOfLogarithms)
{
    /// <summary>An answer in its fit's own unit: ln(min) for the rise time, mL/g for the loaf's volume.</summary>
    public static AnswerPolynomial Of(ModelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var fit = answer.Fitted.Fit;
        var weights = WeightsByPowers(answer.Fitted, answer.Typical);
        var terms = weights.Select(term => new PolynomialTerm(term.Key.OfTemperature, term.Key.OfHydration, fit.Combination(term.Value).Estimate));
        var covariance = weights.Values.Select(one => (IReadOnlyList<double>)[.. weights.Values.Select(other => fit.Covariance(one, other))]);
        var ofOne = new Term("one", 0, 1, fit.ResidualDegreesOfFreedom).Interval(ModelAnswer.Level);
        return new AnswerPolynomial([.. terms], [.. covariance], answer.ResidualSd, ofOne.High, answer.Fitted.Question.Scale.IsLogarithmic);
    }

    // For each pair of powers, how much of each coefficient of the fit goes into its own.
    private static SortedDictionary<(int OfTemperature, int OfHydration), double[]> WeightsByPowers(FittedModel model, DoughSettings typical)
    {
        var columns = model.Fit.Terms.Count;
        var weights = new SortedDictionary<(int, int), double[]> { [(0, 0)] = new double[columns] };
        weights[(0, 0)][0] = 1;
        foreach (var (place, term) in model.Selection.Terms.Index())
        {
            var powers = (PowerOf(term, Cause.DoughTemperature), PowerOf(term, Cause.Hydration));
            if (!weights.TryGetValue(powers, out var ofPowers))
            {
                weights[powers] = ofPowers = new double[columns];
            }

            // What moves is in the powers; what stands still is a number.
            ofPowers[place + 1] = powers == (0, 0) ? term.ValueFrom(measure => typical[measure])!.Value : 1;
        }

        return weights;
    }

    private static int PowerOf(CandidateTerm term, Cause cause) => term.Causes.Zip(term.Powers).Where(pair => pair.First == cause).Sum(pair => pair.Second);
}

/// <summary>One term of a polynomial.</summary>
/// <param name="TemperaturePower">The power of dough temperature less <see cref="ModelAnswer.CentreTemperatureC"/>, in °C.</param>
/// <param name="HydrationPower">The power of hydration less <see cref="ModelAnswer.CentreHydrationPct"/>, in percent.</param>
/// <param name="Coefficient">The coefficient.</param>
public sealed record PolynomialTerm(int TemperaturePower, int HydrationPower, double Coefficient);
