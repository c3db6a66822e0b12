using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class ConvexHullTests
{
    private static readonly Gen<(double, double)[]> Points =
        Gen.Select(Gen.Int[-20, 20].Select(x => (double)x), Gen.Int[-20, 20].Select(y => (double)y)).Array[3, 30];

    [Fact]
    public void A_square_with_points_inside_and_on_its_edge_has_four_corners()
    {
        var hull = ConvexHull.Of([(0, 0), (2, 0), (2, 2), (0, 2), (1, 1), (1, 0), (0, 0)]);
        Assert.Equal([(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)], hull.Corners);
        Assert.True(hull.Holds(1, 0) && hull.Holds(2, 2) && hull.Holds(0.5, 1.9));
        Assert.False(hull.Holds(2.01, 1) || hull.Holds(-0.01, 0));
    }

    [Fact]
    public void Points_on_a_line_hold_nothing()
    {
        var hull = ConvexHull.Of([(0, 0), (1, 1), (3, 3)]);
        Assert.Equal([(0.0, 0.0), (3.0, 3.0)], hull.Corners);
        Assert.False(hull.Holds(1, 1));
        Assert.Equal([(4.0, 5.0)], ConvexHull.Of([(4, 5), (4, 5)]).Corners);
    }

    [Fact]
    public void Every_point_and_every_mean_of_points_lies_in_its_hull() => Points.Sample(points =>
    {
        var hull = ConvexHull.Of(points);
        Assert.All(hull.Corners, corner => Assert.Contains(corner, points));
        if (hull.Corners.Count >= 3)
        {
            Assert.All(points, point => Assert.True(hull.Holds(point.Item1, point.Item2)));
            Assert.True(hull.Holds(points.Average(point => point.Item1), points.Average(point => point.Item2)));
            Assert.False(hull.Holds(points.Max(point => point.Item1) + 0.001, 0));
        }
    });

    [Fact]
    public void No_point_and_points_that_are_no_number_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ConvexHull.Of([]));
        Assert.Throws<ArgumentException>(() => ConvexHull.Of([(double.NaN, 0)]));
    }
}
