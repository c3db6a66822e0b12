using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The fitted specific volume over hydration and dough temperature, where it was baked and nowhere else.</summary>
/// <param name="HydrationsPct">The hydrations of the grid, rising, in percent.</param>
/// <param name="TemperaturesC">The dough temperatures of the grid, rising, in °C.</param>
/// <param name="Volumes">
/// The specific volume in mL/g, a row for each temperature and in it one for each hydration; null outside the bakes.
/// </param>
/// <param name="Baked">The corners of the smallest convex region that holds the bakes: hydration, then temperature.</param>
/// <param name="TopPValues">
/// For each place of the grid how well it agrees with being the surface's level place; those of 0.05 or more are the 95 %
/// region of Box and Hunter (<see cref="StationaryPoint.RegionPValue"/>). Null outside the bakes; empty where the surface
/// has no squares and product.
/// </param>
/// <param name="Top">The fitted top, where the surface has one among the bakes; otherwise null.</param>
public sealed record LoafSurface(
    IReadOnlyList<double> HydrationsPct,
    IReadOnlyList<double> TemperaturesC,
    IReadOnlyList<IReadOnlyList<double?>> Volumes,
    IReadOnlyList<(double HydrationPct, double TemperatureC)> Baked,
    IReadOnlyList<IReadOnlyList<double?>> TopPValues,
    (double HydrationPct, double TemperatureC)? Top)
{
    /// <summary>The share of places that <see cref="TopPValues"/> is held against.</summary>
    public const double RegionPValue = 1 - ModelAnswer.Level;

    // Fine enough for a smooth contour on a page.
    private const int Across = 61;
    private const int Up = 47;

    /// <summary>The surface; null where a term is missing, bakes aren't kept, or they lie on a line.</summary>
    internal static LoafSurface? Of(LoafVolumeAnswer answer)
    {
        if (answer.IsFromSums || answer.Coefficient(LoafVolume.HydrationTerm) is null || answer.Coefficient(LoafVolume.DoughTemperatureTerm) is null)
        {
            return null;
        }

        var places = answer.Used.Select(bake => (Measures.Hydration.Of(bake)!.Value, Measures.DoughTemperature.Of(bake)!.Value)).ToList();
        var hull = ConvexHull.Of(places);
        if (hull.Corners.Count < 3)
        {
            return null;
        }

        var hydrations = Grid(places.Select(place => place.Item1), Across);
        var temperatures = Grid(places.Select(place => place.Item2), Up);
        var stationary = StationaryOf(answer.Fit);
        IReadOnlyList<IReadOnlyList<double?>> Over(Func<double, double, double> value) =>
        [
            .. temperatures.Select(celsius => (IReadOnlyList<double?>)
                [.. hydrations.Select(percent => hull.Holds(percent, celsius) ? value(percent, celsius) : (double?)null)]),
        ];
        return new LoafSurface(
            hydrations,
            temperatures,
            Over((percent, celsius) => answer.At(answer.Typical.With(Measures.Hydration, percent).With(Measures.DoughTemperature, celsius)).Estimate),
            hull.Corners,
            stationary is null ? [] : Over((percent, celsius) => stationary.RegionPValue([percent - Cause.CentreHydrationPct, celsius - Cause.CentreTemperatureC])),
            TopOf(stationary, hull));
    }

    private static double[] Grid(IEnumerable<double> values, int count)
    {
        var (least, most) = (values.Min(), values.Max());
        return [.. Enumerable.Range(0, count).Select(i => least + (i * (most - least) / (count - 1)))];
    }

    private static (double, double)? TopOf(StationaryPoint? point, ConvexHull hull) =>
        point is { Kind: SurfaceKind.Maximum }
        && (point.Location[0] + Cause.CentreHydrationPct, point.Location[1] + Cause.CentreTemperatureC) is var top
        && hull.Holds(top.Item1, top.Item2)
            ? top
            : null;

    // The same fit under the names by which a surface finds its columns; null unless it has all of them.
    private static StationaryPoint? StationaryOf(LeastSquaresFit fit)
    {
        Dictionary<string, string> names = new()
        {
            [LoafVolume.HydrationSquaredTerm] = SurfaceColumns.Square(LoafVolume.HydrationTerm),
            [LoafVolume.DoughTemperatureSquaredTerm] = SurfaceColumns.Square(LoafVolume.DoughTemperatureTerm),
            [LoafVolume.ProductTerm] = SurfaceColumns.Product(LoafVolume.HydrationTerm, LoafVolume.DoughTemperatureTerm),
        };
        if (!names.Keys.All(fit.Design.Names.Contains))
        {
            return null;
        }

        var design = new Design([.. fit.Design.Columns.Select(column => new DesignColumn(names.GetValueOrDefault(column.Name, column.Name), column.Values))]);
        return LeastSquares.Fit(design, fit.Response).TryGet(out var renamed, out _)
            && StationaryPoint.Of(renamed, [LoafVolume.HydrationTerm, LoafVolume.DoughTemperatureTerm], ModelAnswer.Level).TryGet(out var point, out _)
            ? point
            : null;
    }
}
