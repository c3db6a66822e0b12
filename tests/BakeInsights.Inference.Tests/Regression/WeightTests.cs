using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class WeightTests
{
    [Fact]
    public void Weight_of_two_estimates_what_a_row_given_twice_does() =>
        Gen.Select(RandomDesigns.Any, Gen.Int[1, 3].Array[30]).Sample((data, counts) =>
        {
            var (design, response) = data;
            int[] repeated = [.. Enumerable.Range(0, design.RowCount).SelectMany(i => Enumerable.Repeat(i, counts[i]))];
            var weighted = LeastSquares.Fit(
                design, response, [.. counts.Take(design.RowCount).Select(count => (double)count)]).Value;
            var twice = LeastSquares.Fit(
                new Design(design.Columns.Select(c =>
                    new DesignColumn(c.Name, [.. repeated.Select(i => c.Values[i])]))),
                [.. repeated.Select(i => response[i])]).Value;
            return weighted.Terms.Zip(twice.Terms).All(pair => Near(pair.First.Estimate, pair.Second.Estimate))
                && Near(weighted.ResidualSumOfSquares, twice.ResidualSumOfSquares)
                && Near(weighted.RSquared, twice.RSquared);
        });

    [Fact]
    public void Equal_weights_change_nothing_but_the_spread_they_refer_to() =>
        RandomDesigns.Any.Sample((design, response) =>
        {
            var plain = LeastSquares.Fit(design, response).Value;
            var weighted = LeastSquares.Fit(design, response, [.. response.Select(_ => 4.0)]).Value;
            return plain.Terms.Zip(weighted.Terms).All(pair =>
                    Near(pair.First.Estimate, pair.Second.Estimate)
                    && Near(pair.First.StandardError, pair.Second.StandardError))
                && Near(2 * plain.ResidualStandardDeviation, weighted.ResidualStandardDeviation)
                && Near(plain.Summary.LogLikelihood!.Value, weighted.Summary.LogLikelihood!.Value)
                && plain.Leverage.Zip(weighted.Leverage).All(pair => Near(pair.First, pair.Second));
        });

    [Theory]
    [InlineData(0, FitProblemKind.ImpossibleValue, "The weight of row 2 is not above zero.")]
    [InlineData(-1, FitProblemKind.ImpossibleValue, "The weight of row 2 is not above zero.")]
    [InlineData(double.NaN, FitProblemKind.MissingValue,
        "Column weights has no finite number in 1 of 3 rows, the first of them row 2.")]
    public void Weight_that_is_no_positive_number_is_refused(double weight, FitProblemKind kind, string message)
    {
        var attempt = LeastSquares.Fit(new Design(DesignColumn.Constant(3)), [1, 2, 4], [1, weight, 1]);

        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message), (problem.Kind, problem.Message));
    }

    [Fact]
    public void Weights_of_another_length_are_a_programming_error() =>
        Assert.StartsWith(
            "The weights have 2 rows and the design 3.",
            Assert.Throws<ArgumentException>(
                () => LeastSquares.Fit(new Design(DesignColumn.Constant(3)), [1, 2, 4], [1, 1])).Message);

    [Fact]
    public void Fits_of_different_weights_are_not_compared()
    {
        var design = new Design(DesignColumn.Constant(4), new DesignColumn("x", [1, 2, 3, 5]));
        double[] y = [1, 3, 2, 5];

        Assert.Throws<ArgumentException>(() => LeastSquares.Compare(
            LeastSquares.Fit(design.Select("constant"), y).Value, LeastSquares.Fit(design, y, [1, 2, 1, 2]).Value));
    }

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= 1e-9 * (1 + Math.Abs(first) + Math.Abs(second));
}
