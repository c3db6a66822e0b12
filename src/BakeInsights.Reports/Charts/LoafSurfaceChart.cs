using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Specific volume over hydration and dough temperature, as lines of equal volume.</summary>
public static class LoafSurfaceChart
{
    private const int HeightPixels = 540;
    private const int Contours = 9;

    // Light enough at its dark end for words to be read on it, also in grey.
    private static readonly object[] Scale = [new object[] { 0, "#FFFFFF" }, new object[] { 1, "#7FB4DC" }];

    /// <summary>
    /// The fitted volume of the typical dough with the bakes on it, inside the region that was baked and nowhere else; where
    /// the top may lie, and the best hydration at the centre's temperature with its interval. Null where the answer
    /// has no such surface.
    /// </summary>
    public static GenericChart? Of(LoafVolumeAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Surface() is not { } surface)
        {
            return null;
        }

        var figures = new Figures(units);
        var temperature = figures.UnitOf(Dimension.Temperature);
        var label = figures.UnitOf(Dimension.SpecificVolume).Label;
        var layout = ChartFrame.Layout(
            $"{LoafVolumeChart.TitleOf(answer, figures)}. Lines of equal specific volume ({label}), drawn only where bakes lie around");
        layout.SetProperty("height", HeightPixels);
        layout.SetProperty("xaxis", ChartFrame.Axis(figures.TitleOf(Measures.Hydration)));
        layout.SetProperty("yaxis", ChartFrame.Axis(figures.TitleOf(Measures.DoughTemperature)));
        return ChartFrame.With(
            layout,
            [
                Volumes(surface, figures),
                .. Region(surface, figures),
                Edge(surface, temperature),
                Traces.Points(
                    "bake",
                    answer.Used.Select(bake => (object)Measures.Hydration.Of(bake)!.Value),
                    answer.Used.Select(bake => temperature.Value(Measures.DoughTemperature.Of(bake)!.Value)),
                    answer.Used.Select(bake => HoverWords.Of(bake, figures, Measures.Hydration, Measures.DoughTemperature, Measures.SpecificVolume)),
                    Palette.Series[0]),
                .. Best(answer, surface, figures),
                .. Top(surface, figures),
            ]);
    }

    private static Trace Volumes(LoafSurface surface, Figures figures)
    {
        var (temperature, volume) = (figures.UnitOf(Dimension.Temperature), figures.UnitOf(Dimension.SpecificVolume));
        var trace = Contour("fitted", surface, temperature, surface.Volumes.Select(row => row.Select(z => z is { } value ? volume.Value(value) : (double?)null)));
        trace.SetProperty("colorscale", Scale);
        trace.SetProperty("ncontours", Contours);
        trace.SetProperty("contours", new Dictionary<string, object>
        {
            ["coloring"] = "fill",
            ["showlabels"] = true,
            ["labelfont"] = new Dictionary<string, object> { ["color"] = Palette.Ink, ["size"] = 12 },
        });
        trace.SetProperty("line", new Dictionary<string, object> { ["color"] = Palette.Ink, ["width"] = 1 });
        trace.SetProperty("hovertemplate", $"%{{z:.2f}} {volume.Label} at %{{x:.0f}} %, %{{y:.1f}} {temperature.Label}<extra></extra>");
        return trace;
    }

    private static IEnumerable<Trace> Region(LoafSurface surface, Figures figures)
    {
        if (!surface.TopPValues.Any(row => row.Any(p => p >= LoafSurface.RegionPValue)))
        {
            yield break;
        }

        var trace = Contour("top may lie in here (95 %)", surface, figures.UnitOf(Dimension.Temperature), surface.TopPValues);
        trace.SetProperty("contours", new Dictionary<string, object>
        {
            ["coloring"] = "none", ["start"] = LoafSurface.RegionPValue, ["end"] = LoafSurface.RegionPValue, ["size"] = 1,
        });
        trace.SetProperty("autocontour", false);
        trace.SetProperty("line", new Dictionary<string, object> { ["color"] = Palette.Series[2].Colour, ["width"] = 3, ["dash"] = "dash" });
        trace.SetProperty("showlegend", true);
        trace.SetProperty("hoverinfo", "skip");
        yield return trace;
    }

    private static Trace Contour(string name, LoafSurface surface, DisplayUnit temperature, IEnumerable<IEnumerable<double?>> heights) =>
        Traces.Contour(name, surface.HydrationsPct, surface.TemperaturesC.Select(temperature.Value), heights);

    private static Trace Edge(LoafSurface surface, DisplayUnit temperature)
    {
        IReadOnlyList<(double HydrationPct, double TemperatureC)> round = [.. surface.Baked, surface.Baked[0]];
        return Traces.Line(
            "edge of what was baked", round.Select(corner => (object)corner.HydrationPct), round.Select(corner => temperature.Value(corner.TemperatureC)),
            Palette.Ink, "dot");
    }

    private static IEnumerable<Trace> Best(LoafVolumeAnswer answer, LoafSurface surface, Figures figures)
    {
        if (answer.BestHydration is not { } best
            || ModelAnswer.CentreTemperatureC < surface.TemperaturesC[0] || ModelAnswer.CentreTemperatureC > surface.TemperaturesC[^1])
        {
            yield break;
        }

        // An open end, or one beyond what was baked, goes to the chart's edge.
        var (low, high) = (Math.Max(best.Low ?? double.MinValue, surface.HydrationsPct[0]), Math.Min(best.High ?? double.MaxValue, surface.HydrationsPct[^1]));
        var at = figures.WithUnit(Dimension.Temperature, ModelAnswer.CentreTemperatureC);
        yield return Traces.Points(
                $"best hydration at {at} (95 %)",
                [best.Value],
                [figures.UnitOf(Dimension.Temperature).Value(ModelAnswer.CentreTemperatureC)],
                [Traces.Words($"Best hydration at {at}", $"{Figures.Rounded(best.Value, 0)} % ({Figures.Range(best.Low, best.High, 0)})")],
                Palette.Series[2])
            .WithSpansAcross([(low, best.Value, high)], Palette.Series[2].Colour);
    }

    private static IEnumerable<Trace> Top(LoafSurface surface, Figures figures)
    {
        if (surface.Top is { } top)
        {
            yield return Traces.Points(
                "fitted top",
                [top.HydrationPct],
                [figures.UnitOf(Dimension.Temperature).Value(top.TemperatureC)],
                [Traces.Words("Fitted top", $"{Figures.Rounded(top.HydrationPct, 0)} %, {figures.WithUnit(Dimension.Temperature, top.TemperatureC)}")],
                (Palette.Ink, "star"));
        }
    }
}
