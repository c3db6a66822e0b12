using MathNet.Numerics.Distributions;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class QuadraticVertexTests
{
    private static readonly double[] X = [-3, -2, -1, 0, 1, 2, 3, 4];

    [Theory]
    [InlineData(-2, VertexKind.Maximum)]
    [InlineData(2, VertexKind.Minimum)]
    public void Vertex_of_an_exact_parabola_is_its_turning_point(double bend, VertexKind kind)
    {
        var y = X.Select(x => 7 + (bend * (x - 1.5) * (x - 1.5))).ToArray();

        var vertex = QuadraticVertex.Of(LeastSquares.Fit(Parabola(X), y).Value, "x", "x squared", 0.95).Value;

        Assert.Equal(kind, vertex.Kind);
        Close.Relative(1.5, vertex.Location.Estimate, 1e-14);
        Close.Relative(1.5, vertex.Location.Low, 1e-14);
        Close.Relative(1.5, vertex.Location.High, 1e-14);
    }

    [Fact]
    public void Vertex_moves_with_a_held_variable()
    {
        // y = 4 x - x^2 + 0.5 x z turns at x = 2 + z / 4.
        double[] z = [1, 0, 2, 1, 0, 3, 1, 2];
        var interaction = X.Zip(z, (a, b) => a * b).ToArray();
        var y = X.Zip(interaction, (x, xz) => (4 * x) - (x * x) + (0.5 * xz)).ToArray();
        var design = new Design([.. Parabola(X).Columns, new DesignColumn("x z", interaction)]);
        var fit = LeastSquares.Fit(design, y).Value;

        var vertex = QuadraticVertex.Of(
            fit, "x", "x squared", 0.95, new Dictionary<string, double> { ["x z"] = 3 }).Value;

        Close.Relative(2.75, vertex.Location.Estimate, 1e-13);
    }

    [Fact]
    public void Line_without_error_has_no_vertex()
    {
        var fit = LeastSquares.Fit(Parabola(X), X).Value;

        var attempt = QuadraticVertex.Of(fit, "x", "x squared", 0.95);

        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.NoCurvature, problem.Kind);
        Assert.Equal(["x squared"], problem.Columns);
        Assert.Equal("The coefficient of x squared is exactly zero, so the curve has no vertex.", problem.Message);
        Assert.Equal("Describe x by a straight line.", problem.Remedy);
    }

    [Fact]
    public void Held_columns_are_not_x_or_its_square()
    {
        var fit = LeastSquares.Fit(Parabola(X), [1, 3, 2, 5, 4, 3, 3, 1]).Value;

        var error = Assert.Throws<ArgumentException>(() =>
            QuadraticVertex.Of(fit, "x", "x squared", 0.95, new Dictionary<string, double> { ["x"] = 1 }));

        Assert.StartsWith("Column x can't be held, for it holds x alone.", error.Message);
    }

    [Fact]
    public void Ninety_five_percent_sets_hold_the_true_vertex_in_ninety_five_percent_of_data_sets()
    {
        // y = 10 + 2 x - 0.5 x^2 turns at x = 2; the errors leave the bend clear.
        var random = new Random(20240607);
        double[] x = [-2, -1, 0, 1, 2, 3, 4, 5, 6, 1.5, 2.5, 3.5];
        var design = Parabola(x);
        var hits = 0;
        for (var k = 0; k < Coverage.DataSets; k++)
        {
            var y = x.Select(v => 10 + (2 * v) - (0.5 * v * v) + Normal.Sample(random, 0, 1)).ToArray();
            var fit = LeastSquares.Fit(design, y).Value;
            hits += QuadraticVertex.Of(fit, "x", "x squared", 0.95).Value.Location.Contains(2) ? 1 : 0;
        }

        Coverage.IsNinetyFivePercent(hits);
    }

    private static Design Parabola(double[] x) => new(
        DesignColumn.Constant(x.Length),
        new DesignColumn("x", x),
        new DesignColumn("x squared", x.Select(v => v * v).ToArray()));
}
