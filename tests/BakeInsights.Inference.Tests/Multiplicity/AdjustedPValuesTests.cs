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

    [Fact]
    public void What_is_no_p_value_is_refused() => Assert.StartsWith(
        "A p value lies between 0 and 1.",
        Assert.Throws<ArgumentException>(() => AdjustedPValues.Holm([0.5, double.NaN])).Message);

    [Fact]
    public void Family_error_of_ten_true_hypotheses_is_at_most_five_and_a_half_percent()
    {
        // Ten coefficients of which none is other than zero, correlated through one common number.
        var random = new Random(1979);
        var errors = Enumerable.Range(0, 10_000).Count(_ =>
        {
            var common = Normal.Sample(random, 0, 1);
            var p = Enumerable.Range(0, 10).Select(_ =>
                2 * Normal.CDF(0, 1, -Math.Abs((0.5 * common) + (Math.Sqrt(0.75) * Normal.Sample(random, 0, 1)))));
            return AdjustedPValues.Holm([.. p]).Any(a => a <= 0.05);
        });

        Assert.InRange(errors, 300, 550);
    }
}
