using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The chance of all goals over hydration and dough temperature, all else as in the formula advised.</summary>
/// <param name="HydrationsPct">The hydrations of the grid, rising, in percent.</param>
/// <param name="TemperaturesC">The dough temperatures of the grid, rising, in °C.</param>
/// <param name="Chances">
/// The chance, 0 to 1, a row for each temperature and in it one for each hydration; null where no bakes lie around.
/// </param>
/// <param name="Edge">The corners of the smallest convex region that holds the bakes: hydration, then temperature.</param>
/// <param name="Bakes">The bakes that the models rest on and that have both settings.</param>
public sealed record TuneMap(
    IReadOnlyList<double> HydrationsPct,
    IReadOnlyList<double> TemperaturesC,
    IReadOnlyList<IReadOnlyList<double?>> Chances,
    IReadOnlyList<(double HydrationPct, double TemperatureC)> Edge,
    IReadOnlyList<Bake> Bakes)
{
    // Fine enough for smooth lines on a page.
    private const int Steps = 25;

    internal static TuneMap? Of(TuneModel model, double[] advised)
    {
        var (temperature, hydration) = (PlaceOf(model, Measures.DoughTemperature), PlaceOf(model, Measures.Hydration));
        if (temperature < 0 || hydration < 0)
        {
            return null;
        }

        Bake[] bakes = [.. model.Models.SelectMany(one => one.Selection.Bakes).Distinct()
            .Where(bake => Measures.DoughTemperature.Of(bake) is not null && Measures.Hydration.Of(bake) is not null)];
        var hull = ConvexHull.Of(bakes.Select(bake => (Measures.Hydration.Of(bake)!.Value, Measures.DoughTemperature.Of(bake)!.Value)));
        if (hull.Corners.Count < 3)
        {
            return null;
        }

        double[] At(double percent, double celsius)
        {
            double[] place = [.. advised];
            (place[temperature], place[hydration]) = (celsius, percent);
            return place;
        }

        var (hydrations, temperatures) = (Grid(hull.Corners.Select(corner => corner.X)), Grid(hull.Corners.Select(corner => corner.Y)));
        return new TuneMap(
            hydrations,
            temperatures,
            [
                .. temperatures.Select(celsius => (IReadOnlyList<double?>)
                    [.. hydrations.Select(percent => hull.Holds(percent, celsius) ? model.Chance(At(percent, celsius)) : (double?)null)]),
            ],
            hull.Corners,
            bakes);
    }

    private static int PlaceOf(TuneModel model, Measure measure) =>
        model.Axes.Index().Where(axis => axis.Item == measure).Select(axis => axis.Index).DefaultIfEmpty(-1).First();

    private static double[] Grid(IEnumerable<double> values)
    {
        var (low, high) = (values.Min(), values.Max());
        return [.. Enumerable.Range(0, Steps).Select(i => low + (i * (high - low) / (Steps - 1)))];
    }
}
