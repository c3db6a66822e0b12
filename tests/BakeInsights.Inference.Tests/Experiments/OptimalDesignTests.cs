using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>The best determinants there are, found by looking at every choice in exact rational arithmetic.</summary>
public class OptimalDesignTests
{
    [Theory]
    [InlineData(3, 4)]
    [InlineData(4, 8)]
    [InlineData(5, 16)]
    [InlineData(6, 32)]
    public void Parabola_in_one_factor_has_the_best_determinant(int runs, double best) =>
        Reaches(Candidates([.. Enumerable.Range(-10, 21).Select(i => new[] { i / 10.0 })], squares: true), runs, best);

    [Theory]
    [InlineData(4, 256)]
    [InlineData(5, 512)]
    [InlineData(6, 1024)]
    [InlineData(7, 2048)]
    [InlineData(8, 4096)]
    public void Plane_in_three_factors_has_the_best_determinant(int runs, double best) =>
        Reaches(Candidates(Grid([-1, 1], 3), squares: false), runs, best);

    [Theory]
    [InlineData(6, 256)]
    [InlineData(7, 960)]
    [InlineData(8, 2304)]
    [InlineData(9, 5184)]
    [InlineData(10, 9360)]
    public void Surface_in_two_factors_has_the_best_determinant(int runs, double best) =>
        Reaches(Candidates(Grid([-1, 0, 1], 2), squares: true), runs, best);

    [Theory]
    [InlineData(6, 144)]
    [InlineData(7, 434)]
    public void Surface_under_a_constraint_has_the_best_determinant(int runs, double best)
    {
        // Warm and wet together are left out: x1 + x2 is at most 1.
        var allowed = Grid([-1, -0.5, 0, 0.5, 1], 2).Where(p => p[0] + p[1] <= 1).ToArray();

        Assert.Equal(22, allowed.Length);
        Reaches(Candidates(allowed, squares: true), runs, best);
    }

    [Fact]
    public void Earlier_runs_are_taken_into_account()
    {
        // By hand: after both ends were run the third run that tells a parabola's bend is the middle.
        var candidates = Candidates([[-1], [-0.5], [0], [0.5], [1]], squares: true);
        var earlier = Candidates([[-1], [1]], squares: true);

        var design = OptimalDesign.Find(candidates, 1, DesignCriterion.Determinant, 1, earlier).Value;

        Assert.Equal([2], design.Candidates);
        Close.Relative(4, Math.Exp(design.LogDeterminant), 1e-12);
    }

    [Fact]
    public void Average_variance_is_least_over_every_choice()
    {
        var points = Grid([-1, 0, 1], 2);
        var candidates = Candidates(points, squares: true);
        foreach (var runs in new[] { 6, 7 })
        {
            var best = Choices(9, runs).Min(rows => AverageVariance(candidates, rows));

            var design = OptimalDesign.Find(candidates, runs, DesignCriterion.AveragePrediction, 1).Value;

            Close.Relative(best, design.AverageVariance, 1e-9);
            Close.Relative(AverageVariance(candidates, [.. design.Candidates]), design.AverageVariance, 1e-9);
        }
    }

    [Fact]
    public void Variance_of_aims_is_least_over_every_choice()
    {
        // Slopes along x1 at three places of a surface in two factors, after three runs that were made already.
        var candidates = Candidates(Grid([-1, 0, 1], 2), squares: true);
        var earlier = Candidates([[0, 0], [0, 1], [1, 0]], squares: true);
        var aims = new Design(candidates.Names.Select(name => new DesignColumn(
            name, [.. new[] { -0.5, 0, 0.5 }.Select(x => name == "x1" ? 1 : name == "x1 squared" ? 2 * x : 0)])));

        var best = Choices(9, 4).Min(rows => AverageVariance(candidates, rows, earlier, aims));
        var design = OptimalDesign.Find(candidates, 4, DesignCriterion.AveragePrediction, 1, earlier, aims: aims).Value;

        Close.Relative(best, design.AverageVariance, 1e-9);
        Assert.StartsWith(
            "The aims have other columns than the candidates.",
            Assert.Throws<ArgumentException>(() => OptimalDesign.Find(
                candidates, 4, DesignCriterion.AveragePrediction, 1, earlier, aims: aims.Without("x1"))).Message);
    }

    [Fact]
    public void Same_seed_gives_the_same_design()
    {
        var candidates = Candidates(Grid([-1, 0, 1], 3), squares: true);

        int[] Rows() => [.. OptimalDesign.Find(candidates, 12, DesignCriterion.Determinant, 5).Value.Candidates];

        Assert.Equal(Rows(), Rows());
    }

    [Fact]
    public void Units_of_columns_do_not_change_the_choice() => Gen.Double[-50, 50].Sample(exponent =>
    {
        var given = Candidates(Grid([-1, 0, 1], 2), squares: true);
        var unit = Math.Pow(10, exponent);
        var scaled = new Design(given.Columns.Select(c =>
            new DesignColumn(c.Name, [.. c.Values.Select(v => v * unit)])));
        var (one, other) = (OptimalDesign.Find(given, 8, DesignCriterion.Determinant, 2).Value,
            OptimalDesign.Find(scaled, 8, DesignCriterion.Determinant, 2).Value);
        Close.Absolute(one.LogDeterminant, other.LogDeterminant - (12 * Math.Log(unit)), 1e-6);
    }, iter: 20);

    [Fact]
    public void Candidates_without_a_design_are_problems()
    {
        var line = Candidates([[-1], [0], [1]], squares: true);
        IsProblem(
            OptimalDesign.Find(line, 2, DesignCriterion.Determinant, 1), FitProblemKind.TooFewRows,
            "There are 3 columns, and with 2 more runs there are 2 in all.",
            "Plan 3 or more runs, or leave columns out.");
        IsProblem(
            OptimalDesign.Find(Candidates([[-1], [1]], squares: true), 4, DesignCriterion.Determinant, 1),
            FitProblemKind.DependentColumn,
            "Column x1 squared is zero or a combination of the columns before it in all candidates, so no choice of "
                + "runs can tell its effect apart.",
            "Leave x1 squared out, or add candidates in which it varies by itself.");
        IsProblem(
            OptimalDesign.Find(
                Candidates([[-1], [double.NaN], [1]], squares: false), 4, DesignCriterion.Determinant, 1),
            FitProblemKind.MissingValue,
            "Column x1 holds something that is not a finite number.",
            "Give the missing numbers or leave these rows out.");
        Assert.StartsWith(
            "The earlier runs have other columns than the candidates.",
            Assert.Throws<ArgumentException>(() => OptimalDesign.Find(
                line, 4, DesignCriterion.Determinant, 1, line.Without("x1"))).Message);
    }

    private static void Reaches(Design candidates, int runs, double best)
    {
        var design = OptimalDesign.Find(candidates, runs, DesignCriterion.Determinant, 1).Value;

        Assert.Equal(runs, design.Candidates.Count);
        Close.Relative(best, Math.Exp(design.LogDeterminant), 1e-9);
        Close.Relative(Math.Pow(best, 1.0 / candidates.Columns.Count) / runs, design.Efficiency, 1e-9);
    }

    private static double AverageVariance(Design candidates, int[] rows, Design? earlier = null, Design? aims = null)
    {
        aims ??= candidates;
        double[][] runs = [.. rows.Select(row => candidates.Row(row).ToArray()), .. Enumerable.Range(0, earlier?.RowCount ?? 0).Select(i => earlier!.Row(i).ToArray())];
        var x = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfRowArrays(runs);
        var information = x.TransposeThisAndMultiply(x);
        if (information.Determinant() < 1e-9)
        {
            return double.PositiveInfinity;
        }

        var inverse = information.Inverse();
        return Enumerable.Range(0, aims.RowCount).Average(i =>
        {
            var row = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.DenseOfEnumerable(aims.Row(i));
            return row * inverse * row;
        });
    }

    /// <summary>Every choice of so many out of a number, with repeats.</summary>
    private static IEnumerable<int[]> Choices(int count, int taken) => taken == 0
        ? [[]]
        : Choices(count, taken - 1).SelectMany(start =>
            Enumerable.Range(start.Length == 0 ? 0 : start[^1], count - (start.Length == 0 ? 0 : start[^1]))
                .Select(next => (int[])[.. start, next]));

    private static double[][] Grid(double[] levels, int factors) => factors == 0
        ? [[]]
        : [.. Grid(levels, factors - 1).SelectMany(start => levels.Select(level => (double[])[.. start, level]))];

    private static Design Candidates(double[][] points, bool squares)
    {
        DesignColumn[] factors =
        [
            .. Enumerable.Range(0, points[0].Length)
                .Select(j => new DesignColumn($"x{j + 1}", [.. points.Select(p => p[j])])),
        ];
        return new Design([DesignColumn.Constant(points.Length), .. squares ? SurfaceColumns.Of(factors) : factors]);
    }

    private static void IsProblem(Attempt<OptimalDesign> attempt, FitProblemKind kind, string message, string remedy)
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal((kind, message, remedy), (problem.Kind, problem.Message, problem.Remedy));
    }
}
