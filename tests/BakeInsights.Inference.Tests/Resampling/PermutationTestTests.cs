using Xunit;

namespace BakeInsights.Inference.Tests;

public class PermutationTestTests
{
    private static readonly Resamples Some = new(20_000, 5);

    [Fact]
    public void Means_of_ten_rows_are_compared_over_all_divisions()
    {
        var expected = ReferenceTable.Read("r/resampling-expected.csv");
        var p = expected.Numbers("value")[Array.IndexOf(expected.Texts("case"), "means")];

        var test = PermutationTest.OfMeans([31, 35, 28, 40, 33], [41, 38, 36, 45, 39], Some).Value;

        Assert.True(test.IsExact);
        Assert.Equal(252, test.OrderCount);
        Close.Relative(p, test.PValue, 1e-14);
        Close.Relative(6.4, test.Statistic, 1e-14);
    }

    [Fact]
    public void Drawn_divisions_come_near_to_all_divisions()
    {
        double[] first = [31, 35, 28, 40, 33, 30, 37, 36], second = [41, 38, 36, 45, 39, 34, 33, 35];
        var all = PermutationTest.OfMeans(first, second, new Resamples(20_000, 1)).Value;
        var drawn = PermutationTest.OfMeans(first, second, new Resamples(10_000, 1)).Value;

        Assert.Equal((true, 12_870), (all.IsExact, all.OrderCount));
        Assert.Equal((false, 10_001), (drawn.IsExact, drawn.OrderCount));
        Close.Absolute(all.PValue, drawn.PValue, 5 * Math.Sqrt(all.PValue * (1 - all.PValue) / 10_000));
    }

    [Fact]
    public void Rows_change_places_within_their_blocks_only()
    {
        string[] blocks = ["a", "b", "a", "b", "a"];

        PermutationTest.Of(5, order =>
        {
            Assert.All(Enumerable.Range(0, 5), to => Assert.Equal(blocks[to], blocks[order[to]]));
            Assert.Equal([0, 1, 2, 3, 4], order.Order());
            return 1;
        }, Some, blocks);
    }

    [Fact]
    public void All_tied_responses_give_a_p_value_of_one() =>
        Assert.Equal(1, PermutationTest.OfMeans([2, 2, 2], [2, 2, 2], Some).Value.PValue);

    [Fact]
    public void Answer_is_the_same_on_one_core_and_on_many()
    {
        double[] y = [3, 1, 4, 1, 5, 9, 2, 6];
        double Statistic(IReadOnlyList<int> order) => order.Select((from, to) => to * y[from]).Sum();

        Assert.Equal(
            PermutationTest.Of(8, Statistic, Some with { Cores = 1 }).Value,
            PermutationTest.Of(8, Statistic, Some with { Cores = 8 }).Value);
    }

    [Fact]
    public void Chance_rejects_at_five_percent_in_five_percent()
    {
        var random = new Random(3);
        double[] Draw() => [.. Enumerable.Range(0, 5).Select(_ => random.NextDouble())];
        var rejected = Enumerable.Range(0, 4000)
            .Count(_ => PermutationTest.OfMeans(Draw(), Draw(), Some).Value.PValue <= 0.05);

        // Of 252 divisions in mirrored pairs 12 at most are within 5 %: 4.76 %.
        Assert.InRange(rejected, 4000 * (0.0476 - 0.0135), 4000 * (0.0476 + 0.0135));
    }

    [Fact]
    public void Data_without_an_answer_are_problems()
    {
        IsProblem(
            PermutationTest.OfMeans([], [1], Some), FitProblemKind.TooFewRows,
            "A group has no rows.", "Add rows to the empty group.");
        IsProblem(
            PermutationTest.OfMeans([1, 2], [double.NaN], Some), FitProblemKind.MissingValue,
            "Column response has no finite number in row 3 of the two groups together.",
            "Give the missing numbers or leave these rows out.");
        IsProblem(
            PermutationTest.Of(2, _ => 1, Some, ["a", "b"]), FitProblemKind.TooFewRows,
            "No row can change places with another, so there is nothing to compare with.",
            "Add rows, so that a block has two or more.");
        IsProblem(
            PermutationTest.Of(3, _ => double.NaN, Some), FitProblemKind.MissingValue,
            "The statistic is not a finite number for these rows or for an order of them.",
            "Give the missing numbers, or take a statistic that every order has.");
    }

    private static void IsProblem(Attempt<PermutationTest> attempt, FitProblemKind kind, string message, string remedy)
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
    }
}
