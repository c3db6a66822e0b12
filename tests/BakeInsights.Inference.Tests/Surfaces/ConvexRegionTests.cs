using CsCheck;
using Xunit;

namespace BakeInsights.Inference.Tests;

public class ConvexRegionTests
{
    private static readonly ConvexRegion Square = ConvexRegion.Of([[0.0, 0], [2, 0], [2, 2], [0, 2], [1, 1]]);

    [Theory]
    [InlineData(1, 1, true)]
    [InlineData(2, 2, true)]
    [InlineData(0, 1, true)]
    [InlineData(2.001, 1, false)]
    [InlineData(-1, -1, false)]
    public void A_square_holds_its_inside_and_its_edge(double x, double y, bool holds) => Assert.Equal(holds, Square.Holds([x, y]));

    [Fact]
    public void A_line_is_followed_to_the_edge()
    {
        // From the middle to (5, 1) the edge at x = 2 lies a quarter of the way.
        Assert.Equal(0.25, Square.Reach([1, 1], [5, 1])!.Value, 1e-9);
        Assert.Equal(1, Square.Reach([1, 1], [1.5, 1.9])!.Value, 1e-9);
        Assert.Equal(0, Square.Reach([2, 2], [3, 2])!.Value, 1e-9);
        Assert.Null(Square.Reach([3, 3], [1, 1]));
    }

    [Fact]
    public void Rows_on_a_line_hold_the_line_only()
    {
        var line = ConvexRegion.Of([[0.0, 0], [1, 1], [3, 3]]);
        Assert.True(line.Holds([2, 2]));
        Assert.False(line.Holds([2, 2.1]));
        Assert.Equal(0, line.Reach([2, 2], [2, 3])!.Value, 1e-9);
        Assert.Equal(0.5, line.Reach([2, 2], [4, 4])!.Value, 1e-9);
        Assert.True(ConvexRegion.Of([[4.0]]).Holds([4]));
        Assert.False(ConvexRegion.Of([[4.0]]).Holds([5]));
    }

    /// <summary>A simplex holds what is not negative and sums to no more than its corners.</summary>
    [Fact]
    public void A_simplex_of_four_factors_holds_what_sums_to_one_or_less()
    {
        var simplex = ConvexRegion.Of([[0.0, 0, 0, 0], [1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0], [0, 0, 0, 1]]);
        Gen.Double[0, 0.5].Array[4].Sample(place =>
            Math.Abs(place.Sum() - 1) < 1e-6 || simplex.Holds(place) == (place.Sum() <= 1));
    }

    [Fact]
    public void A_plane_is_held_as_the_hull_of_its_corners_holds_it() =>
        (from rows in Gen.Select(Gen.Int[-20, 20], Gen.Int[-20, 20]).Array[3, 12]
         from place in Gen.Select(Gen.Double[-25, 25], Gen.Double[-25, 25])
         select (rows, place)).Sample(drawn =>
        {
            var hull = ConvexHull.Of(drawn.rows.Select(row => ((double)row.Item1, (double)row.Item2)));
            var region = ConvexRegion.Of([.. drawn.rows.Select(row => new double[] { row.Item1, row.Item2 })]);

            // Hulls of a line hold nothing; and what lies within rounding of an edge may go either way.
            return hull.Corners.Count < 3
                || hull.Holds(drawn.place.Item1, drawn.place.Item2) == region.Holds([drawn.place.Item1, drawn.place.Item2])
                || DistanceToEdges(hull, drawn.place) < 1e-6;
        });

    [Fact]
    public void What_is_reached_is_held_and_what_lies_beyond_is_not() =>
        (from rows in Gen.Int[-20, 20].Select(value => (double)value).Array[3].Array[4, 30]
         from to in Gen.Double[-60, 60].Array[3]
         select (rows, to)).Sample(drawn =>
        {
            var region = ConvexRegion.Of(drawn.rows);
            double[] from = [.. Enumerable.Range(0, 3).Select(j => drawn.rows.Average(row => row[j]))];
            var share = region.Reach(from, drawn.to)!.Value;
            double[] At(double way) => [.. from.Zip(drawn.to, (a, b) => a + (way * (b - a)))];
            return region.Holds(At(share * (1 - 1e-5))) && (share == 1 || !region.Holds(At((share * (1 + 1e-5)) + 1e-5)));
        });

    [Fact]
    public void What_is_no_region_is_refused()
    {
        Assert.Throws<ArgumentException>(() => ConvexRegion.Of([]));
        Assert.Throws<ArgumentException>(() => ConvexRegion.Of([[1.0], [1, 2]]));
        Assert.Throws<ArgumentException>(() => ConvexRegion.Of([[double.NaN]]));
        Assert.Throws<ArgumentException>(() => Square.Holds([1]));
    }

    private static double DistanceToEdges(ConvexHull hull, (double X, double Y) place) =>
        hull.Corners.Select((corner, i) => (From: corner, To: hull.Corners[(i + 1) % hull.Corners.Count])).Min(edge =>
            Math.Abs(((edge.To.X - edge.From.X) * (place.Y - edge.From.Y)) - ((edge.To.Y - edge.From.Y) * (place.X - edge.From.X)))
                / double.Hypot(edge.To.X - edge.From.X, edge.To.Y - edge.From.Y));
}
