using BakeInsights.Inference;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>An answer written out as a polynomial says what the answer itself says.</summary>
public class AnswerPolynomialTests
{
    private static readonly Gen<(double Celsius, double Percent)> Doughs = Gen.Select(Gen.Double[15, 32], Gen.Double[55, 80]);

    [Fact]
    public void It_predicts_what_the_answer_predicts_with_the_same_interval() =>
        Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[8, 40], Doughs).Sample(
            (seed, bakes, dough) =>
            {
                var month = ExactKitchen.Month(seed, new KitchenTruth(), bakes);
                Same(RiseTime.Ask(month), (answer, settings) => answer.At(settings), dough);
                Same(LoafVolume.Ask(month), (answer, settings) => answer.At(settings), dough);
            },
            iter: 200);

    [Fact]
    public void Each_pair_of_powers_comes_once_and_settings_that_stand_still_are_in_the_constant()
    {
        var rise = AnswerPolynomial.Of(DemoJournal.RiseTime);
        Assert.Equal([(0, 0), (0, 1), (1, 0)], rise.Terms.Select(term => (term.TemperaturePower, term.HydrationPower)));
        Assert.True(rise.IsOfLogarithms);
        var volume = AnswerPolynomial.Of(DemoJournal.LoafVolume);
        Assert.Equal([(0, 0), (0, 1), (0, 2), (1, 0), (1, 1), (2, 0)], volume.Terms.Select(term => (term.TemperaturePower, term.HydrationPower)));
        Assert.False(volume.IsOfLogarithms);
        Assert.Equal(DemoJournal.LoafVolume.Coefficient(LoafVolume.ProductTerm)!.Estimate, volume.Terms[4].Coefficient);
    }

    private static void Same<T>(Attempt<T> attempt, Func<T, DoughSettings, CurvePoint> at, (double Celsius, double Percent) dough)
        where T : ModelAnswer
    {
        if (!attempt.TryGet(out var answer, out _))
        {
            return;
        }

        var polynomial = AnswerPolynomial.Of(answer);
        var point = at(answer, answer.Typical.With(Measures.DoughTemperature, dough.Celsius).With(Measures.Hydration, dough.Percent));
        double[] values =
        [
            .. polynomial.Terms.Select(term =>
                Math.Pow(dough.Celsius - ModelAnswer.CentreTemperatureC, term.TemperaturePower)
                * Math.Pow(dough.Percent - ModelAnswer.CentreHydrationPct, term.HydrationPower)),
        ];
        var estimate = values.Zip(polynomial.Terms, (value, term) => value * term.Coefficient).Sum();
        var variance = values.Index().Sum(i => values.Index().Sum(j => i.Item * j.Item * polynomial.Covariance[i.Index][j.Index]));
        var reach = polynomial.StudentQuantile * Math.Sqrt(variance + (polynomial.ResidualSd * polynomial.ResidualSd));
        double Back(double value) => polynomial.IsOfLogarithms ? Math.Exp(value) : value;
        Assert.Equal(1, Back(estimate) / point.Estimate, 1e-8);
        Assert.Equal(1, (Back(estimate + reach) - Back(estimate)) / (point.Prediction.High - point.Estimate), 1e-6);
        Assert.Equal(1, (Back(estimate) - Back(estimate - reach)) / (point.Estimate - point.Prediction.Low), 1e-6);
    }
}
