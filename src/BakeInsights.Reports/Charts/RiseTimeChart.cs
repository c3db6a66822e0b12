using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Rise time against dough temperature.</summary>
public static class RiseTimeChart
{
    private const int CurvePoints = 60;

    /// <summary>
    /// Each bake as it would have been with the typical dough, a stroke between the looks that it lies between, stopped
    /// rises as arrows; the fitted curve, the band of its mean, and the band that one more bake falls in. Null when the
    /// answer has no term for temperature.
    /// </summary>
    public static GenericChart? AgainstDoughTemperature(RiseTimeAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.RangeOf(Measures.DoughTemperature) is not { } baked || answer.Q10 is null)
        {
            return null;
        }

        var figures = new Figures(units);
        var temperature = figures.UnitOf(Dimension.Temperature);
        double[] grid =
            [.. Enumerable.Range(0, CurvePoints).Select(i => baked.Least + (i * (baked.Most - baked.Least) / (CurvePoints - 1)))];
        var curve = answer.OverTemperature(grid);
        double[] x = [.. grid.Select(temperature.Value)];
        var stopped = answer.LooksAsTypical().Where(look => look.ReadyMin is null).ToList();
        var layout = ChartFrame.Layout(TitleOf(answer, temperature));
        layout.SetProperty("xaxis", ChartFrame.Axis(figures.TitleOf(Measures.DoughTemperature)));
        layout.SetProperty("yaxis", ChartFrame.Axis(figures.TitleOf(Measures.RiseTime)));
        layout.SetProperty("annotations", stopped.Select(look => Traces.ArrowUp(temperature.Value(look.DoughTemperatureC), look.NotReadyMin!.Value)).ToArray());
        return ChartFrame.With(
            layout,
            [
                Traces.Band(Palette.OneMoreName, x, curve.Select(p => p.Prediction.Low), curve.Select(p => p.Prediction.High), Palette.OneMore),
                Traces.Band(Palette.MeanName, x, curve.Select(p => p.Mean.Low), curve.Select(p => p.Mean.High), Palette.Mean),
                Traces.Line("fitted", x.Cast<object>(), curve.Select(p => p.Estimate), Palette.Series[0].Colour),
                .. Bakes(answer, stopped, figures),
            ]);
    }

    private static IEnumerable<Trace> Bakes(RiseTimeAnswer answer, IReadOnlyList<RiseLook> stopped, Figures figures)
    {
        var looks = answer.LooksAsTypical();
        yield return Marks(
                "bake, moved to the typical dough",
                [.. looks.Take(answer.Used.Count)], answer.MinutesAsTypical(), figures, Palette.Series[2])
            .WithSpans(
                looks.Zip(answer.MinutesAsTypical(), (look, middle) => (look.NotReadyMin!.Value, middle, look.ReadyMin!.Value)),
                Palette.Series[2].Colour);
        var first = looks.Where(look => look.NotReadyMin is null).ToList();
        if (first.Count > 0)
        {
            yield return Marks(
                "ready at the first look: sooner than this", first, first.Select(look => look.ReadyMin!.Value), figures, (Palette.Ink, "triangle-down-open"));
        }

        if (stopped.Count > 0)
        {
            yield return Marks(
                "stopped, arrow: longer than this", stopped, stopped.Select(look => look.NotReadyMin!.Value), figures, (Palette.Ink, "circle-open"));
        }
    }

    private static Trace Marks(
        string name, IReadOnlyList<RiseLook> looks, IEnumerable<double> minutes, Figures figures, (string Colour, string Marker) look) =>
        Traces.Points(
            name,
            looks.Select(one => (object)figures.UnitOf(Dimension.Temperature).Value(one.DoughTemperatureC)),
            minutes,
            looks.Select(one => HoverWords.Of(one.Bake, figures, Measures.DoughTemperature, Measures.RiseTime, Measures.Hydration, Measures.Yeast)),
            look);

    private static string TitleOf(RiseTimeAnswer answer, DisplayUnit temperature)
    {
        var minutes = answer.ChangeInMinutes(1 / temperature.Factor)!;
        var (low, high) = minutes.Value < 0 ? (-minutes.High, -minutes.Low) : (minutes.Low, minutes.High);
        return $"1 {temperature.Label} warmer: about {Figures.Rounded(Math.Abs(minutes.Value), 0)} min "
            + $"{(minutes.Value < 0 ? "sooner" : "later")} ({Figures.Range(low, high, 0)}; 95 % interval, {JournalView.Count(answer.UsedCount, "bake")})"
            + (answer.LooksAsTypical().Any(look => look.ReadyMin > look.NotReadyMin) ? ". A stroke lies between two looks" : "");
    }
}
