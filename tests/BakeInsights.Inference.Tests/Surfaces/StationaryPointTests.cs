using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class StationaryPointTests
{
    [Theory]
    [InlineData("reaction", SurfaceKind.Maximum, SurfaceKind.Maximum)]
    [InlineData("helicopter", SurfaceKind.Saddle, SurfaceKind.Saddle)]
    [InlineData("pastry", SurfaceKind.Maximum, SurfaceKind.Ridge)]
    public void Point_of_published_surfaces_is_the_expected_one(string name, SurfaceKind kind, SurfaceKind shown)
    {
        var (fit, factors) = Fit(name);

        var point = StationaryPoint.Of(fit, factors, 0.95).Value;

        for (var j = 0; j < factors.Length; j++)
        {
            var direction = point.Directions[j];
            Close.Relative(MethodsExpected.Of(name, $"place {factors[j]}"), point.Location[j], 1e-9);
            Close.Relative(MethodsExpected.Of(name, $"bend {j + 1}"), direction.Bend.Estimate, 1e-9);
            Close.Relative(MethodsExpected.Of(name, $"bend {j + 1} SE"), direction.Bend.StandardError, 1e-9);
            Close.Relative(MethodsExpected.Of(name, $"direction {j + 1} first"), direction.Direction[0], 1e-8);
        }

        Close.Relative(MethodsExpected.Of(name, "height"), point.Height, 1e-9);
        Assert.Equal((kind, shown), (point.Kind, point.ShownKind));
    }

    [Fact]
    public void Place_of_the_reaction_is_the_printed_one()
    {
        // Lenth (2009), Response-surface methods in R, Journal of Statistical Software 32(7): 0.3722954, 0.3343802.
        var (fit, factors) = Fit("reaction");
        var point = StationaryPoint.Of(fit, factors, 0.95).Value;

        Close.Absolute(0.3722954, point.Location[0], 5e-8);
        Close.Absolute(0.3343802, point.Location[1], 5e-8);
        Assert.False(point.IsOutsideData);
        Assert.Empty(point.FactorsBeyondData);
    }

    [Fact]
    public void Place_beyond_the_data_is_said()
    {
        var (fit, factors) = Fit("pastry");

        var point = StationaryPoint.Of(fit, factors, 0.95).Value;

        Assert.True(point.IsOutsideData);
        Assert.Equal(["x1", "x2", "x3"], point.FactorsBeyondData);
    }

    [Fact]
    public void Place_in_an_empty_corner_is_outside_though_within_each_range()
    {
        // Both factors rise together; the top of the surface is where one is high and the other low.
        double[] a = [-2, -1, -1, 0, 0, 0, 1, 1, 2, -1.5, 0.5, 1.5];
        double[] b = [-2, -1, -0.6, 0.3, 0, -0.3, 1, 0.7, 2, -1.2, 0.9, 1.1];
        var y = a.Zip(b, (u, v) => 5 - ((u - 1.5) * (u - 1.5)) - ((v + 1.5) * (v + 1.5))).ToArray();
        var fit = LeastSquares.Fit(Surface([new("a", a), new("b", b)]), y).Value;

        var point = StationaryPoint.Of(fit, ["a", "b"], 0.95).Value;

        Close.Relative(1.5, point.Location[0], 1e-9);
        Assert.Empty(point.FactorsBeyondData);
        Assert.True(point.IsOutsideData);
    }

    [Fact]
    public void Quadratic_built_around_a_place_is_level_there() =>
        Gen.Select(Gen.Double[-3, 3].Array[2], Gen.Double[0.2, 3].Array[2], Gen.Double[-1.5, 1.5], Gen.Bool)
            .Sample((place, bends, turn, up) =>
            {
                var steps = Enumerable.Range(-2, 5);
                var grid = (from i in steps from j in steps select (i, j)).ToArray();
                var (cos, sin) = (Math.Cos(turn), Math.Sin(turn));
                var y = grid.Select(p =>
                {
                    var (u, v) = (p.i - place[0], p.j - place[1]);
                    var (s, t) = ((cos * u) + (sin * v), (cos * v) - (sin * u));
                    return (up ? 1 : -1) * ((bends[0] * s * s) + (bends[1] * t * t));
                }).ToArray();
                double[] a = [.. grid.Select(p => (double)p.i)], b = [.. grid.Select(p => (double)p.j)];
                var fit = LeastSquares.Fit(Surface([new("a", a), new("b", b)]), y).Value;
                var point = StationaryPoint.Of(fit, ["a", "b"], 0.95).Value;
                Close.Absolute(place[0], point.Location[0], 1e-7);
                Close.Absolute(place[1], point.Location[1], 1e-7);
                Assert.Equal(up ? SurfaceKind.Minimum : SurfaceKind.Maximum, point.Kind);
            });

    [Fact]
    public void Plane_has_no_stationary_point()
    {
        var grid = (from i in Enumerable.Range(-1, 3) from j in Enumerable.Range(-1, 3) select (i, j)).ToArray();
        var fit = LeastSquares.Fit(
            Surface([new("a", [.. grid.Select(p => (double)p.i)]), new("b", [.. grid.Select(p => (double)p.j)])]),
            [.. grid.Select(p => 1.0 + p.i + (2 * p.j))]).Value;

        Assert.False(StationaryPoint.Of(fit, ["a", "b"], 0.95).TryGet(out _, out var problem));
        Assert.Equal(FitProblemKind.NoCurvature, problem.Kind);
        Assert.Equal(
            "The surface has no bend in some direction of a, b, so it is level nowhere, or along a whole line.",
            problem.Message);
        Assert.Equal(
            "Leave a factor's square and products out, or add rows that differ more in the factors.", problem.Remedy);
    }

    [Fact]
    public void Region_holds_the_estimate_and_not_a_far_place()
    {
        var (fit, factors) = Fit("reaction");
        var point = StationaryPoint.Of(fit, factors, 0.95).Value;

        Assert.True(point.RegionHolds(point.Location, 0.5));
        Assert.False(point.RegionHolds([1.4, 1.4], 0.999));
        Throws("There are 1 numbers for 2 factors.", () => point.RegionHolds([1], 0.95));
        Throws("A level lies between 0 and 1", () => point.RegionHolds([1, 1], 95));
        Throws("A surface needs at least one factor.", () => StationaryPoint.Of(fit, [], 0.95));
        Throws("No column is named z", () => StationaryPoint.Of(fit, ["x1", "z"], 0.95));
    }

    [Fact]
    public void One_factor_has_the_vertex_of_its_parabola()
    {
        double[] x = [0, 1, 2, 3, 4, 5, 6];
        var fit = LeastSquares.Fit(Surface([new("x", x)]), [1, 3, 4.2, 4.4, 3.7, 2.9, 0.4]).Value;

        Close.Relative(
            QuadraticVertex.Of(fit, "x", "x squared", 0.95).Value.Location.Estimate!.Value,
            StationaryPoint.Of(fit, ["x"], 0.95).Value.Location[0],
            1e-12);
    }

    [Fact]
    public void Resampled_places_lie_about_the_place()
    {
        var (fit, factors) = Fit("reaction");
        var refits = Bootstrap.LeastSquaresErrors(fit.Design, fit.Response, new Resamples(2000, 1)).Value;

        var places = StationaryPoint.Resampled(refits, factors);

        var interval = places[0].Value.Percentile(0.95).Value;
        Assert.True(interval.Contains(0.3722954));
        Assert.InRange(interval.High - interval.Low, 0.03, 0.3);
    }

    private static void Throws(string message, Func<object> action) =>
        Assert.StartsWith(message, Assert.ThrowsAny<ArgumentException>(action).Message);

    private static Design Surface(DesignColumn[] factors) =>
        new([DesignColumn.Constant(factors[0].Values.Count), .. SurfaceColumns.Of(factors)]);

    private static (LeastSquaresFit Fit, string[] Factors) Fit(string name)
    {
        var (file, block, response, count) = name switch
        {
            "reaction" => ("surfaces/reaction.csv", "block", "yield", 2),
            "helicopter" => ("surfaces/helicopter.csv", "block", "time", 4),
            _ => ("bread/pastry.csv", "day", "y", 3),
        };
        var table = ReferenceTable.Read(file);
        string[] factors = [.. Enumerable.Range(1, count).Select(j => $"x{j}")];
        var design = new Design(
        [
            DesignColumn.Constant(table.RowCount),
            .. GroupColumns.From(block, table.Texts(block), GroupCoding.AgainstFirst),
            .. SurfaceColumns.Of([.. factors.Select(table.Column)]),
        ]);
        return (LeastSquares.Fit(design, table.Numbers(response)).Value, factors);
    }
}
