using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class JointRegressionTests
{
    private const int Draws = 20_000;

    private static readonly double[] X = [.. Enumerable.Range(0, 12).Select(i => (double)i)];
    private static readonly double[] Y = [5.1, 4.7, 5.9, 6.2, 6.0, 7.1, 7.4, 7.0, 8.3, 8.1, 9.2, 8.8];
    private static readonly Interval AtMostSeven = new(double.NegativeInfinity, 7);

    // R 4.2: f <- lm(y ~ x); p <- predict(f, data.frame(x = x0), se.fit = TRUE);
    // pt((7 - p$fit) / sqrt(p$se.fit^2 + summary(f)$sigma^2), 10)
    [Theory]
    [InlineData(5, 0.6877498169)]
    [InlineData(6, 0.340017887)]
    public void One_response_without_priors_has_the_chances_of_Students_t(double x, double chance)
    {
        var draws = JointRegression.Draw([Line("y", Y)], Draws, seed: 3).Value;

        // Each draw's own chance varies by less than 0.1, so that their mean errs by less than a thousandth.
        Assert.Equal(chance, draws.Probabilities([[1, x]], [AtMostSeven]).Average(), 0.003);
    }

    // R: coef(lm(y ~ x)).
    [Fact]
    public void Means_of_the_draws_are_least_squares()
    {
        var draws = JointRegression.Draw([Line("y", Y)], Draws, seed: 3).Value;

        Assert.Equal(4.860256410256, draws.MeanOf(0, 0), 0.01);
        Assert.Equal(0.386013986014, draws.MeanOf(0, 1), 0.002);
    }

    [Fact]
    public void Residuals_that_go_together_are_found_and_counted()
    {
        const double together = 0.6;
        const int rows = 400;
        var random = new Random(7);
        var (first, second) = (new double[rows], new double[rows]);
        for (var i = 0; i < rows; i++)
        {
            first[i] = Normal.Sample(random, 0, 1);
            second[i] = (together * first[i]) + Normal.Sample(random, 0, Math.Sqrt(1 - (together * together)));
        }

        var draws = JointRegression.Draw([Mean("first", first), Mean("second", second)], 4_000, seed: 1).Value;

        // The standard error of a correlation of 0.6 in 400 pairs is (1 - 0.36) / 20; both below zero by Sheppard (1899):
        // 1/4 + arcsin(r) / (2 pi).
        var correlation = draws.CorrelationsOf(0, 1).Average();
        Assert.Equal(together, correlation, 3 * 0.032);
        Interval below = new(double.NegativeInfinity, 0);
        Assert.Equal(0.25 + (Math.Asin(correlation) / (2 * Math.PI)), draws.Probabilities([[1], [1]], [below, below]).Average(), 0.06);
    }

    [Fact]
    public void A_strong_prior_draws_a_coefficient_to_it()
    {
        var free = JointRegression.Draw([Line("y", Y)], 4_000, seed: 3).Value.MeanOf(0, 1);
        var held = JointRegression.Draw([Line("y", Y) with { Priors = [[new NormalPrior("x", 0, 0.05)]] }], 4_000, seed: 3).Value.MeanOf(0, 1);

        Assert.InRange(held, 0, free);
    }

    [Fact]
    public void The_same_seed_draws_the_same() => Assert.Equal(
        JointRegression.Draw([Line("y", Y)], 50, seed: 9).Value.Probabilities([[1, 4]], [AtMostSeven]),
        JointRegression.Draw([Line("y", Y)], 50, seed: 9).Value.Probabilities([[1, 4]], [AtMostSeven]));

    [Fact]
    public void Rows_without_scatter_are_a_problem()
    {
        Assert.False(JointRegression.Draw([Line("y", X)], 10, seed: 1).TryGet(out _, out var problem));
        Assert.Equal("The columns meet the y of every row, so there is no spread to judge by.", problem.Message);
    }

    private static JointResponse Line(string name, double[] values) =>
        new(name, new Design(DesignColumn.Constant(X.Length), new DesignColumn("x", X)), values, [.. Enumerable.Range(0, X.Length)]);

    private static JointResponse Mean(string name, double[] values) =>
        new(name, new Design(DesignColumn.Constant(values.Length)), values, [.. Enumerable.Range(0, values.Length)]);
}
