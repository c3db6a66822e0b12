using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class BootstrapTests
{
    private static readonly Resamples Some = new(400, 7);

    [Fact]
    public void Same_seed_gives_the_same_answer_on_one_core_and_on_many()
    {
        var (design, response) = Line(30);
        var one = Bootstrap.LeastSquares(design, response, new Resamples(5000, 3) { Cores = 1 }).Value;
        var many = Bootstrap.LeastSquares(design, response, new Resamples(5000, 3) { Cores = 8 }).Value;
        var other = Bootstrap.LeastSquares(design, response, new Resamples(5000, 4)).Value;

        Assert.Equal(one.Of("x").Value.Values, many.Of("x").Value.Values);
        Assert.NotEqual(one.Of("x").Value.Values, other.Of("x").Value.Values);
    }

    [Fact]
    public void Refit_is_the_least_squares_fit_of_the_drawn_rows() => RandomDesigns.Any.Sample((design, response) =>
    {
        var resamples = new Resamples(99, 11);
        var refits = Bootstrap.LeastSquares(design, response, resamples).Value;
        double? Slope(IReadOnlyList<int> rows) =>
            Fit(design, response, rows).Match<double?>(fit => fit.Terms[1].Estimate, _ => null);
        if (!refits.Of("x1").TryGet(out var fast, out _)
            || !Bootstrap.Of("slope", response.Length, Slope, resamples).TryGet(out var slow, out _))
        {
            return true;
        }

        // A resample of as many different rows as columns is exact, and only the fast way takes it.
        return slow.FailedCount != fast.FailedCount || slow.Values.Zip(fast.Values).All(pair =>
            Math.Abs(pair.First - pair.Second) <= 1e-6 * (1 + Math.Abs(pair.First)));
    }, iter: 60);

    [Fact]
    public void Units_of_column_and_response_carry_over()
    {
        var (design, response) = Line(20);
        var given = Bootstrap.LeastSquares(design, response, Some).Value.Of("x").Value.BiasCorrected(0.9).Value;
        foreach (var unit in new[] { 1e-70, 1e-3, 1e70 })
        {
            var scaled = new Design(
                design.Columns[0], new DesignColumn("x", [.. design.Columns[1].Values.Select(x => x * unit)]));
            var byColumn = Bootstrap.LeastSquares(scaled, response, Some).Value.Of("x").Value;
            var byResponse = Bootstrap.LeastSquares(design, [.. response.Select(y => y * unit)], Some).Value
                .Of("x").Value;
            Close.Relative(given.Low, byColumn.BiasCorrected(0.9).Value.Low * unit, 1e-9);
            Close.Relative(given.High, byResponse.BiasCorrected(0.9).Value.High / unit, 1e-9);
        }
    }

    [Fact]
    public void Clusters_are_drawn_whole()
    {
        string[] ovens = ["a", "a", "b", "b", "b", "c"];
        var sizes = new Dictionary<string, int> { ["a"] = 2, ["b"] = 3, ["c"] = 1 };

        Bootstrap.Of("rows", 6, rows =>
        {
            var labels = rows.GroupBy(i => ovens[i]);
            Assert.All(labels, oven => Assert.Equal(0, oven.Count() % sizes[oven.Key]));
            Assert.All(rows.GroupBy(i => i), row => Assert.Equal(
                rows.Count(i => ovens[i] == ovens[row.Key]) / sizes[ovens[row.Key]], row.Count()));
            return rows.Count;
        }, Some, ovens);
    }

    [Fact]
    public void Spread_of_a_mean_by_cluster_is_that_of_the_clusters_means()
    {
        // Rows of one cluster are equal, so only clusters count: the spread of 10 means, over the root of 10.
        double[] means = [3, 7, 1, 9, 4, 4, 8, 2, 6, 5];
        double[] y = [.. means.SelectMany(m => new[] { m, m, m })];
        string[] clusters = [.. means.SelectMany((_, c) => Enumerable.Repeat($"c{c}", 3))];
        var design = new Design(DesignColumn.Constant(30));

        var distribution = Bootstrap.LeastSquares(design, y, new Resamples(20_000, 1), clusters).Value
            .Of("constant").Value;

        var spread = Math.Sqrt(means.Average(m => (m - 4.9) * (m - 4.9)) / 10);
        Close.Relative(spread, distribution.StandardError, 0.02);
    }

    [Fact]
    public void Few_rows_and_failed_resamples_are_said()
    {
        var design = new Design(DesignColumn.Constant(5), new DesignColumn("rare", [1, 0, 0, 0, 1]));

        var distribution = Bootstrap.LeastSquares(design, [5, 2, 3, 4, 9], Some).Value.Of("rare").Value;

        Assert.Equal(
            [
                "There are 5 rows or clusters to draw from; with fewer than 80 intervals from resampling are too "
                    + "narrow.",
                $"{distribution.FailedCount} of 400 resamples gave no estimate and are left out.",
            ],
            distribution.Caveats);
        Assert.InRange(distribution.FailedCount, 20, 60);
    }

    [Fact]
    public void Estimate_that_needs_one_row_has_no_corrected_interval()
    {
        var design = new Design(DesignColumn.Constant(6), new DesignColumn("rare", [1, 0, 0, 0, 0, 0]));

        var distribution = Bootstrap.LeastSquares(design, [5, 2, 3, 4, 9, 1], Some).Value.Of("rare").Value;

        IsProblem(
            distribution.BiasCorrected(0.9), FitProblemKind.TooFewRows,
            "Without row or cluster 1 the data give no rare, so the interval can't be corrected.",
            "Add rows like that one, or take the percentile interval.");
        Assert.True(distribution.Percentile(0.9).Succeeded);
    }

    [Fact]
    public void Estimate_at_the_edge_of_its_resamples_has_no_corrected_interval()
    {
        double[] y = [1, 2, 3, 4, 5, 6, 7, 8];
        var distribution = Bootstrap.Of(
            "odd", 8, rows => rows.Distinct().Count() == 8 ? -1 : rows.Max(i => y[i]), Some);

        IsProblem(
            distribution.Value.BiasCorrected(0.9), FitProblemKind.OutOfRange,
            "All resamples of odd lie to one side of the estimate, so the interval can't be corrected.",
            "Take more resamples, or the percentile interval.");
    }

    [Fact]
    public void Level_beyond_the_resamples_is_told() => IsProblem(
        Bootstrap.Of("mean", 9, rows => rows.Average(), new Resamples(99, 1)).Value.Percentile(0.99),
        FitProblemKind.TooFewRows,
        "99 resamples of mean don't reach the ends of so wide an interval.",
        "Take more resamples, or a lower level.");

    [Fact]
    public void Data_that_cannot_be_resampled_are_problems()
    {
        IsProblem(
            Bootstrap.Of("mean", 1, rows => rows.Average(), Some), FitProblemKind.TooFewRows,
            "There is one row or cluster only, so drawing from them again says nothing about mean.",
            "Add rows or clusters.");
        IsProblem(
            Bootstrap.Of("mean", 9, _ => 4, Some), FitProblemKind.NoSpread,
            "Every resample gives the same mean, so its uncertainty can't be told from these data.",
            "Add rows that differ.");
        IsProblem(
            Bootstrap.Of("mean", 9, _ => double.NaN, Some), FitProblemKind.TooFewRows,
            "The data, or more than half of the resamples of them, give no mean.",
            "Add rows.");
        Assert.False(Bootstrap.LeastSquares(Line(5).Design, [1, 2, double.NaN, 4, 5], Some).Succeeded);
        Assert.False(
            Bootstrap.LeastSquares(Line(5).Design, [1, 2, 3, 4, 5], Some, ["a", "a", "a", "a", "a"]).Succeeded);
    }

    [Fact]
    public void Arguments_that_contradict_each_other_are_refused()
    {
        Throws("Take at least 99 resamples.", () => new Resamples(10, 1));
        Throws("There are 1 cluster labels and 9 rows.", () => Bootstrap.Of("mean", 9, _ => 1, Some, ["a"]));
        Throws("Every row needs a cluster", () => Bootstrap.Of("mean", 2, _ => 1, Some, ["a", " "]));
        Throws("A level lies between 0 and 1", () =>
            Bootstrap.Of("mean", 9, rows => rows.Average(), Some).Value.Percentile(95));
    }

    private static (Design Design, double[] Response) Line(int rows)
    {
        var random = new Random(17);
        double[] x = [.. Enumerable.Range(0, rows).Select(i => i / 3.0)];
        return (new Design(DesignColumn.Constant(rows), new DesignColumn("x", x)),
            [.. x.Select(v => 2 + (0.3 * v) + random.NextDouble())]);
    }

    private static Attempt<LeastSquaresFit> Fit(Design design, double[] response, IReadOnlyList<int> rows) =>
        LeastSquares.Fit(
            new Design(design.Columns.Select(c => new DesignColumn(c.Name, [.. rows.Select(i => c.Values[i])]))),
            [.. rows.Select(i => response[i])]);

    private static void IsProblem<T>(Attempt<T> attempt, FitProblemKind kind, string message, string remedy)
        where T : notnull
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);
}
