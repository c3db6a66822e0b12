namespace BakeInsights.Inference;

/// <summary>The smallest convex region that holds points of a plane.</summary>
/// <remarks>
/// Andrew (1979), Another efficient algorithm for convex hulls in two dimensions, Information Processing Letters 9,
/// 216-219.
/// </remarks>
public sealed class ConvexHull
{
    private const double Rounding = 1e-9;

    private ConvexHull(IReadOnlyList<(double X, double Y)> corners) => Corners = corners;

    /// <summary>The corners, counterclockwise from the leftmost; two or one where the points lie on a line or in a place.</summary>
    public IReadOnlyList<(double X, double Y)> Corners { get; }

    /// <summary>Finds the region.</summary>
    /// <param name="points">The points, finite, one or more.</param>
    /// <exception cref="ArgumentException">There is no point, or one isn't finite.</exception>
    public static ConvexHull Of(IEnumerable<(double X, double Y)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        (double X, double Y)[] ordered = [.. points.Distinct().Order()];
        if (ordered.Length == 0 || !ordered.All(point => double.IsFinite(point.X) && double.IsFinite(point.Y)))
        {
            throw new ArgumentException("A hull takes one point or more, all finite.", nameof(points));
        }

        if (ordered.Length == 1)
        {
            return new ConvexHull(ordered);
        }

        var lower = Chain(ordered);
        var upper = Chain(ordered.Reverse());
        return new ConvexHull([.. lower.SkipLast(1), .. upper.SkipLast(1)]);
    }

    /// <summary>Whether a place lies in the region or on its edge; in none where the points lie on a line.</summary>
    public bool Holds(double x, double y)
    {
        if (Corners.Count < 3)
        {
            return false;
        }

        for (var i = 0; i < Corners.Count; i++)
        {
            var (from, to) = (Corners[i], Corners[(i + 1) % Corners.Count]);
            var scale = Math.Abs(to.X - from.X) * Math.Abs(to.Y - from.Y) + Rounding;
            if (Turn(from, to, (x, y)) < -Rounding * scale)
            {
                return false;
            }
        }

        return true;
    }

    private static List<(double X, double Y)> Chain(IEnumerable<(double X, double Y)> points)
    {
        List<(double X, double Y)> chain = [];
        foreach (var point in points)
        {
            while (chain.Count >= 2 && Turn(chain[^2], chain[^1], point) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(point);
        }

        return chain;
    }

    // Twice the area of the triangle, more than 0 where it turns left.
    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
