using CsCheck;
using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class AdjustedPValuesTests
{
    private static readonly Gen<double[]> PValues = Gen.Int[0, 1000].Select(i => i / 1000.0).Array[1, 12];

    [Fact]
    public void Adjusted_p_values_are_the_expected_ones()
    {
        double[] p = [0.01, 0.02, 0.03, 0.005, 0.5, 0.02, 0.8, 1e-8];
        var (holm, rate) = (AdjustedPValues.Holm(p), AdjustedPValues.BenjaminiHochberg(p));
        for (var i = 0; i < p.Length; i++)
        {
            Close.Relative(MethodsExpected.Of("holm", $"{i + 1}"), holm[i], 1e-14);
            Close.Relative(MethodsExpected.Of("benjamini hochberg", $"{i + 1}"), rate[i], 1e-14);
        }
    }

    [Fact]
    public void Adjusted_lies_between_the_p_value_and_its_multiple_and_keeps_the_order() => PValues.Sample(p =>
    {
        foreach (var adjusted in new[] { AdjustedPValues.Holm(p), AdjustedPValues.BenjaminiHochberg(p) })
        {
            Assert.All(p.Zip(adjusted), pair => Assert.InRange(
                pair.Second, pair.First * (1 - 1e-12), Math.Min(1, p.Length * pair.First) * (1 + 1e-12)));
            var ordered = p.Zip(adjusted).OrderBy(pair => pair.First).Select(pair => pair.Second).ToArray();
            Assert.Equal(ordered.Order(), ordered);
        }
    });

    [Fact]
    public void Rate_control_is_never_stricter_than_family_control() => PValues.Sample(p =>
        AdjustedPValues.BenjaminiHochberg(p).Zip(AdjustedPValues.Holm(p))
            .All(pair => pair.First <= pair.Second + 1e-12));

    [Fact]
    public void One_p_value_stays_and_none_stays_none()
    {
        Assert.Equal([0.04], AdjustedPValues.Holm([0.04]));
        Assert.Empty(AdjustedPValues.BenjaminiHochberg([]));
    }

    // By hand from Holm (1979): the ratios of p to weight are 0.005, 0.02 and 0.03, and weights of 4, 2 and 1 are left.
    [Fact]
    public void A_heavier_question_is_given_more_of_the_five_percent()
    {
        var adjusted = AdjustedPValues.Holm([0.02, 0.01, 0.03], [1, 2, 1]);
        Assert.Equal([0.04, 0.02, 0.04], adjusted.Select(p => Math.Round(p, 12)));
    }

    [Fact]
    public void Equal_weights_are_no_weights() => Gen.Select(PValues, Gen.Int[1, 9]).Sample((p, weight) =>
        AdjustedPValues.Holm(p).Zip(AdjustedPValues.Holm(p, [.. p.Select(_ => (double)weight)])).All(pair => Math.Abs(pair.First - pair.Second) < 1e-12));

    [Fact]
    public void A_weight_that_is_none_is_refused() => Assert.StartsWith(
        "Each p value has a weight above 0.",
        Assert.Throws<ArgumentException>(() => AdjustedPValues.Holm([0.5, 0.1], [1, 0])).Message);

    [Fact]
    public void What_is_no_p_value_is_refused() => Assert.StartsWith(
        "A p value lies between 0 and 1.",
        Assert.Throws<ArgumentException>(() => AdjustedPValues.Holm([0.5, double.NaN])).Message);

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Family_error_of_ten_true_hypotheses_is_at_most_five_and_a_half_percent(double weightOfThree)
    {
        double[] weights = [.. Enumerable.Range(0, 10).Select(i => i < 3 ? weightOfThree : 1)];
        // Ten coefficients of which none is other than zero, correlated through one common number.
        var random = new Random(1979);
        var errors = Enumerable.Range(0, 10_000).Count(_ =>
        {
            var common = Normal.Sample(random, 0, 1);
            var p = Enumerable.Range(0, 10).Select(_ =>
                2 * Normal.CDF(0, 1, -Math.Abs((0.5 * common) + (Math.Sqrt(0.75) * Normal.Sample(random, 0, 1)))));
            return AdjustedPValues.Holm([.. p], weights).Any(a => a <= 0.05);
        });

        Assert.InRange(errors, 300, 550);
    }
}
