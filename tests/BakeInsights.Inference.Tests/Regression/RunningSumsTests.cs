using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Sums gathered row by row against the fit of all rows at once.</summary>
public class RunningSumsTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Rows_one_by_one_give_the_same_fit_as_all_at_once() => RandomDesigns.Any.Sample((design, response) =>
        Same(Gathered(design, response, 0, design.RowCount).Fit().Value, LeastSquares.Fit(design, response).Value));

    [Fact]
    public void Sums_of_two_parts_join_to_the_fit_of_both() =>
        Gen.Select(RandomDesigns.Any, Gen.Int[0, 8]).Sample((data, cut) =>
        {
            var (design, response) = data;
            var joined = Gathered(design, response, 0, cut).Join(Gathered(design, response, cut, design.RowCount));
            return Same(joined.Fit().Value, LeastSquares.Fit(design, response).Value);
        });

    [Fact]
    public void Joining_leaves_both_parts_as_they_were()
    {
        var (first, second) = (new RunningSums(["constant", "x"]), new RunningSums(["constant", "x"]));
        AddLine(first, 1, 5);
        AddLine(second, 6, 9);
        var before = first.Fit().Value.Terms[1];

        var joined = first.Join(second);
        AddLine(joined, 20, 21);

        Assert.Equal(before, first.Fit().Value.Terms[1]);
        Assert.Equal((5, 4, 11), (first.RowCount, second.RowCount, joined.RowCount));
    }

    [Fact]
    public void Many_rows_are_folded_in_as_they_come()
    {
        var random = new Random(3);
        const int rows = 2000;
        double[] x = [.. Enumerable.Range(0, rows).Select(_ => 20 + random.NextDouble())];
        double[] y = [.. x.Select(v => (3 * v) + random.NextDouble())];
        var design = new Design(DesignColumn.Constant(rows), new DesignColumn("x", x));

        Assert.True(Same(Gathered(design, y, 0, rows).Fit().Value, LeastSquares.Fit(design, y).Value));
    }

    [Fact]
    public void Blocks_that_are_left_out_give_the_same_slopes_as_a_column_for_every_block() =>
        Gen.Select(RandomDesigns.Any, Gen.Int[0, 3].Array[30], Gen.Int[0, 8]).Sample((data, blocks, cut) =>
        {
            var (given, response) = data;
            var slopes = new Design(given.Columns.Skip(1));
            string[] labels = [.. blocks.Take(given.RowCount).Select(block => $"b{block}")];
            var explicitly = LeastSquares.Fit(
                new Design([.. GroupColumns.From("block", labels, GroupCoding.EveryGroup), .. slopes.Columns]),
                response);
            var joined = Gathered(slopes, response, 0, cut, labels)
                .Join(Gathered(slopes, response, cut, given.RowCount, labels)).Fit();
            if (!explicitly.TryGet(out var expected, out _))
            {
                return !joined.Succeeded;
            }

            return joined.Value.BlockCount == labels.Distinct().Count()
                && joined.Value.ResidualDegreesOfFreedom == expected.ResidualDegreesOfFreedom
                && Near(joined.Value.ResidualStandardDeviation, expected.ResidualStandardDeviation)
                && joined.Value.Terms.All(term => Same(term, expected.Terms.Single(t => t.Name == term.Name)));
        });

    [Fact]
    public void Summary_and_covariance_are_those_of_the_fit_at_once()
    {
        double[] x = [1, 2, 3, 4, 5, 6], y = [2, 1, 4, 3, 6, 5];
        var design = new Design(DesignColumn.Constant(6), new DesignColumn("x", x));
        var (running, atOnce) = (Gathered(design, y, 0, 6).Fit().Value, LeastSquares.Fit(design, y).Value);

        Close.Relative(atOnce.Summary.LogLikelihood!.Value, running.Summary.LogLikelihood, Tolerance);
        Close.Relative(atOnce.Summary.CorrectedAic!.Value, running.Summary.CorrectedAic, Tolerance);
        Close.Relative(atOnce.Covariance(0, 1), running.Covariance([1, 0], [0, 1]), Tolerance);
        Assert.True(Same(atOnce.Combination([1, 7]), running.Combination([1, 7])));
        Assert.Empty(running.Rows);
    }

    [Fact]
    public void Perfect_fit_is_told_from_a_small_spread()
    {
        var sums = new RunningSums(["constant", "x"]);
        AddLine(sums, 1, 9);

        var fit = sums.Fit().Value;

        Assert.Equal((0, 1), (fit.ResidualSumOfSquares, fit.RSquared));
        Assert.Null(fit.Summary.LogLikelihood);
    }

    [Fact]
    public void Missing_numbers_are_told_by_column_and_row_across_a_join()
    {
        var (first, second) = (new RunningSums(["constant", "x"]), new RunningSums(["constant", "x"]));
        AddLine(first, 1, 3);
        AddLine(second, 4, 6);
        second.Add([1, double.NaN], 2);

        Refused(
            first.Join(second), FitProblemKind.MissingValue,
            "Column x has no finite number in 1 of 7 rows, the first of them row 7.");
    }

    [Fact]
    public void Dependence_too_few_rows_and_no_spread_are_told()
    {
        var dependent = new RunningSums(["constant", "x", "twice"]);
        var few = new RunningSums(["constant", "x"]);
        var flat = new RunningSums(["constant", "x"]);
        var fixedInBlocks = new RunningSums(["x"]);
        for (var x = 1; x <= 6; x++)
        {
            dependent.Add([1, x, 2 * x], x % 3);
            flat.Add([1, x], 4);
            fixedInBlocks.Add([x / 3], x, x < 3 ? "a" : x < 6 ? "b" : "c");
        }

        AddLine(few, 1, 2);

        Refused(dependent, FitProblemKind.DependentColumn,
            "Column twice is a multiple of x, so their effects can't be told apart.");
        Refused(few, FitProblemKind.TooFewRows, "There are 2 rows for 2 columns, and at least 3 are needed.");
        Refused(flat, FitProblemKind.NoSpread,
            "Column response is the same in every row, so there is nothing to explain.");
        Refused(fixedInBlocks, FitProblemKind.DependentColumn,
            "Column x doesn't vary within any block, so its effect can't be told from the blocks'.");
    }

    [Fact]
    public void Wrong_use_is_a_programming_error()
    {
        var sums = new RunningSums(["x"]);
        sums.Add([1], 2);

        Assert.Throws<ArgumentException>(() => sums.Add([1, 2], 3));
        Assert.Throws<ArgumentException>(() => sums.Add([1], 3, "a"));
        Assert.Throws<ArgumentException>(() => sums.Join(new RunningSums(["y"])));
        Assert.Throws<ArgumentException>(() => new RunningSums(["x", "x"]));
    }

    private static RunningSums Gathered(Design design, double[] response, int from, int to, string[]? blocks = null)
    {
        var sums = new RunningSums(design.Names);
        for (var i = from; i < to; i++)
        {
            sums.Add([.. design.Row(i)], response[i], blocks?[i]);
        }

        return sums;
    }

    private static void AddLine(RunningSums sums, int from, int to)
    {
        for (var x = from; x <= to; x++)
        {
            sums.Add([1, x], 0.1 * x);
        }
    }

    private static void Refused(RunningSums sums, FitProblemKind kind, string message)
    {
        Assert.False(sums.Fit().TryGet(out _, out var problem));
        Assert.Equal((kind, message), (problem.Kind, problem.Message));
    }

    private static bool Same(RunningFit running, LeastSquaresFit fit) =>
        running.N == fit.N
        && Near(running.ResidualSumOfSquares, fit.ResidualSumOfSquares)
        && Near(running.RSquared, fit.RSquared)
        && running.Terms.Zip(fit.Terms).All(pair => Same(pair.First, pair.Second));

    private static bool Same(Term first, Term second) =>
        first.Name == second.Name && Near(first.Estimate, second.Estimate)
        && Near(first.StandardError, second.StandardError)
        && first.DegreesOfFreedom == second.DegreesOfFreedom;

    private static bool Near(double first, double second) =>
        Math.Abs(first - second) <= Tolerance * (1 + Math.Abs(first) + Math.Abs(second));
}
