using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>The chance of a baker's wishes over hydration and dough temperature.</summary>
public static class TuneChart
{
    private const int HeightPixels = 560;
    private const int LargePixels = 15;

    // Light enough at its dark end for words to be read on it, also in grey.
    private static readonly object[] Scale = [new object[] { 0, "#FFFFFF" }, new object[] { 1, "#7FB4DC" }];

    /// <summary>
    /// Lines of equal chance where bakes lie around, with the yeast and the rest of the formula advised; the bakes, the house
    /// formula, and the one advised. Null where the answer has no map.
    /// </summary>
    public static GenericChart? Of(TuneAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Map is not { } map)
        {
            return null;
        }

        var figures = new Figures(units);
        var temperature = figures.UnitOf(Dimension.Temperature);
        var layout = ChartFrame.Layout(
            $"{TuneWords.Chance(answer.Advised.Chance.Value)} for {(answer.IsChange ? "the formula advised" : "the house formula")}. "
            + "Lines of equal chance in percent, all else as in it");
        layout.SetProperty("height", HeightPixels);
        layout.SetProperty("xaxis", ChartFrame.Axis(figures.TitleOf(Measures.Hydration)));
        layout.SetProperty("yaxis", ChartFrame.Axis(figures.TitleOf(Measures.DoughTemperature)));
        return ChartFrame.With(
            layout,
            [
                Chances(map, temperature),
                Edge(map, temperature),
                Traces.Points(
                    "bake",
                    map.Bakes.Select(bake => (object)Measures.Hydration.Of(bake)!.Value),
                    map.Bakes.Select(bake => temperature.Value(Measures.DoughTemperature.Of(bake)!.Value)),
                    map.Bakes.Select(bake => HoverWords.Of(bake, figures, Measures.Hydration, Measures.DoughTemperature, Measures.Yeast, Measures.RiseTime, Measures.SpecificVolume)),
                    Palette.Series[0]),
                Formula("house formula", answer.House, figures, Palette.Series[2]),
                .. answer.IsChange ? new[] { Formula("formula advised", answer.Best, figures, (Palette.Ink, "star")) } : [],
            ]);
    }

    private static Trace Chances(TuneMap map, DisplayUnit temperature)
    {
        const double least = 10, most = 90, step = 10;
        var trace = Traces.Contour(
            "chance", map.HydrationsPct, map.TemperaturesC.Select(temperature.Value), map.Chances.Select(row => row.Select(chance => 100 * chance)));
        trace.SetProperty("colorscale", Scale);
        trace.SetProperty("zmin", 0);
        trace.SetProperty("zmax", 100);
        trace.SetProperty("autocontour", false);
        trace.SetProperty("contours", new Dictionary<string, object>
        {
            ["start"] = least,
            ["end"] = most,
            ["size"] = step,
            ["coloring"] = "fill",
            ["showlabels"] = true,
            ["labelfont"] = new Dictionary<string, object> { ["color"] = Palette.Ink, ["size"] = 12 },
        });
        trace.SetProperty("line", new Dictionary<string, object> { ["color"] = Palette.Ink, ["width"] = 1 });
        trace.SetProperty("hovertemplate", $"%{{z:.0f}} % at %{{x:.0f}} %, %{{y:.1f}} {temperature.Label}<extra></extra>");
        return trace;
    }

    private static Trace Edge(TuneMap map, DisplayUnit temperature)
    {
        IReadOnlyList<(double HydrationPct, double TemperatureC)> round = [.. map.Edge, map.Edge[0]];
        return Traces.Line(
            "edge of all bakes", round.Select(corner => (object)corner.HydrationPct), round.Select(corner => temperature.Value(corner.TemperatureC)), Palette.Ink, "dot");
    }

    private static Trace Formula(string name, TunedFormula formula, Figures figures, (string Colour, string Marker) look) => Traces.Points(
            name,
            [formula.Settings[Measures.Hydration]!.Value],
            [figures.UnitOf(Dimension.Temperature).Value(formula.Settings[Measures.DoughTemperature]!.Value)],
            [Traces.Words(Figures.Sentence(name), $"Chance: {TuneWords.Chance(formula.Chance.Value)}")],
            look,
            LargePixels);
}
