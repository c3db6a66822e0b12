namespace BakeInsights;

/// <summary>The chance of all goals over dough temperature and hydration, the rest as in the formula advised.</summary>
/// <param name="TemperaturesC">Dough temperatures.</param>
/// <param name="HydrationsPct">Hydrations.</param>
/// <param name="Chances">The chance, 0 to 1, by hydration, then temperature; outside what was baked too.</param>
/// <param name="IsBaked">Whether that dough is among those baked, and keeps to the limits; likewise.</param>
public sealed record TuneMap(
    IReadOnlyList<double> TemperaturesC,
    IReadOnlyList<double> HydrationsPct,
    IReadOnlyList<IReadOnlyList<double>> Chances,
    IReadOnlyList<IReadOnlyList<bool>> IsBaked)
{
    private const int Steps = 25;

    internal static TuneMap? Of(TuneModel model, BakedRegion region, FormulaSearch search, double[] advised)
    {
        var (temperature, hydration) = (PlaceOf(model, Measures.DoughTemperature), PlaceOf(model, Measures.Hydration));
        if (temperature < 0 || hydration < 0)
        {
            return null;
        }

        double[] temperatures = Range(model, Measures.DoughTemperature);
        double[] hydrations = Range(model, Measures.Hydration);
        double[] At(double celsius, double percent)
        {
            double[] place = [.. advised];
            (place[temperature], place[hydration]) = (celsius, percent);
            return place;
        }

        return new TuneMap(
            temperatures,
            hydrations,
            [.. hydrations.Select(percent => temperatures.Select(celsius => model.Chance(At(celsius, percent))).ToArray())],
            [
                .. hydrations.Select(percent => temperatures
                    .Select(celsius => At(celsius, percent))
                    .Select(place => region.Holds(place) && search.IsAllowed(place)).ToArray()),
            ]);
    }

    private static int PlaceOf(TuneModel model, Measure measure) =>
        model.Axes.Index().Where(axis => axis.Item == measure).Select(axis => axis.Index).DefaultIfEmpty(-1).First();

    private static double[] Range(TuneModel model, Measure measure)
    {
        double[] values = [.. model.Models.SelectMany(one => one.Selection.Bakes).Select(measure.Of).Known()];
        var (low, high) = (values.Min(), values.Max());
        return [.. Enumerable.Range(0, Steps).Select(i => low + (i * (high - low) / (Steps - 1)))];
    }
}
