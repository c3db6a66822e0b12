using Xunit;

namespace BakeInsights.Inference.Tests;

public class RunPlanTests
{
    private static readonly FactorLevels Flour = new("flour", "white", "whole", "rye");
    private static readonly FactorLevels Rest = new("rest", "short", "long");
    private static readonly FactorLevels Heat = new("heat", "mild", "hot");
    private static readonly FactorLevels Steam = new("steam", "none", "some");

    [Fact]
    public void Full_factorial_has_every_combination_as_often()
    {
        var plan = RunPlan.FullFactorial([Flour, Rest], 2, 1);

        Assert.Equal(["flour", "rest"], plan.Factors);
        Assert.Equal(Enumerable.Range(1, 12), plan.Runs.Select(run => run.Order));
        var counts = plan.Runs.CountBy(run => string.Join(" ", run.Levels)).ToArray();
        Assert.Equal(6, counts.Length);
        Assert.All(counts, count => Assert.Equal(2, count.Value));
    }

    [Fact]
    public void Half_factorial_balances_every_factor_and_every_pair()
    {
        var plan = RunPlan.HalfFactorial([Rest, Heat, Steam], 1, 1);

        // Box and Hunter (1961): the half in which the product of the levels is 1.
        Assert.Equal(
            ["long hot some", "long mild none", "short hot none", "short mild some"],
            plan.Runs.Select(run => string.Join(" ", run.Levels)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_block_has_every_combination_once()
    {
        var plan = RunPlan.RandomizedBlocks([Flour, Rest], 4, 1);

        Assert.Equal(24, plan.Runs.Count);
        Assert.All(plan.Runs.GroupBy(run => run.Block), block =>
            Assert.Equal(6, block.Select(run => string.Join(" ", run.Levels)).Distinct().Count()));
        Assert.Equal(plan.Runs.OrderBy(run => run.Block), plan.Runs);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(7)]
    public void Latin_square_has_each_treatment_once_in_each_row_and_column(int size)
    {
        var doughs = new FactorLevels("dough", [.. Enumerable.Range(0, size).Select(i => $"d{i}")]);
        var plan = RunPlan.LatinSquare(doughs, 3);

        foreach (var place in new[] { 0, 1 })
        {
            Assert.All(plan.Runs.GroupBy(run => run.Levels[place]), line =>
                Assert.Equal(size, line.Select(run => run.Levels[2]).Distinct().Count()));
        }

        Assert.Equal(size * size, plan.Runs.Count);
    }

    [Fact]
    public void Split_plot_keeps_the_hard_factor_within_a_whole_plot()
    {
        var plan = RunPlan.SplitPlot(Flour, [Rest, Heat], 2, 1);

        Assert.Equal(["flour", "rest", "heat"], plan.Factors);
        var plots = plan.Runs.GroupBy(run => run.Block).ToArray();
        Assert.Equal(6, plots.Length);
        Assert.All(plots, plot =>
        {
            Assert.Single(plot.Select(run => run.Levels[0]).Distinct());
            Assert.Equal(4, plot.Select(run => run.Levels[1] + run.Levels[2]).Distinct().Count());
        });
        Assert.All(plots.CountBy(plot => plot.First().Levels[0]), count => Assert.Equal(2, count.Value));
    }

    [Fact]
    public void Order_comes_from_the_seed_and_from_nothing_else()
    {
        static string Text(int seed) => string.Join(
            "; ", RunPlan.FullFactorial([Flour, Rest], 3, seed).Runs.Select(run => string.Join(" ", run.Levels)));

        Assert.Equal(Text(8), Text(8));
        Assert.NotEqual(Text(8), Text(9));
    }

    [Fact]
    public void Every_run_is_as_likely_to_be_first()
    {
        var first = Enumerable.Range(0, 6000)
            .CountBy(seed => string.Join(" ", RunPlan.FullFactorial([Flour, Rest], 1, seed).Runs[0].Levels)).ToArray();

        // Binomial with mean 1000 and standard deviation 29.
        Assert.Equal(6, first.Length);
        Assert.All(first, count => Assert.InRange(count.Value, 870, 1130));
    }

    [Fact]
    public void Plans_that_cannot_be_are_refused()
    {
        Throws("Factor x needs two levels or more", () => new FactorLevels("x", "one"));
        Throws("Factor x needs two levels or more", () => new FactorLevels("x", "one", "one"));
        Throws("An experiment needs factors", () => RunPlan.FullFactorial([], 1, 1));
        Throws("An experiment needs factors", () => RunPlan.SplitPlot(Rest, [Rest], 2, 1));
        Throws("A half needs three factors", () => RunPlan.HalfFactorial([Rest, Heat], 1, 1));
        Throws("A half needs three factors", () => RunPlan.HalfFactorial([Rest, Heat, Flour], 1, 1));
        Throws("A Latin square needs three treatments", () => RunPlan.LatinSquare(Rest, 1));
        Assert.ThrowsAny<ArgumentException>(() => RunPlan.RandomizedBlocks([Rest], 1, 1));
        Assert.ThrowsAny<ArgumentException>(() => RunPlan.FullFactorial([Rest], 0, 1));
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
