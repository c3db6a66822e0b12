using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Rise time against dough temperature.</summary>
public static class RiseTimeChart
{
    private const int CurvePoints = 60;

    /// <summary>
    /// Each bake as it would have been with the typical dough, the fitted curve, the band of its mean, and the band
    /// that one more bake falls in. Null when the answer has no term for temperature.
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
        var look = Palette.Series[0];
        return ChartFrame.Around(
            TitleOf(answer, temperature),
            figures.TitleOf(Measures.DoughTemperature),
            figures.TitleOf(Measures.RiseTime),
            Traces.Band("one more bake (95 %)", x, curve.Select(p => p.Prediction.Low), curve.Select(p => p.Prediction.High), Palette.Sheer(look.Colour, 0.12)),
            Traces.Band("mean of many (95 %)", x, curve.Select(p => p.Mean.Low), curve.Select(p => p.Mean.High), Palette.Sheer(look.Colour, 0.3)),
            Traces.Line("fitted", x.Cast<object>(), curve.Select(p => p.Estimate), look.Colour),
            Traces.Points(
                "bake, moved to the typical dough",
                answer.Used.Select(bake => (object)temperature.Value(Measures.DoughTemperature.Of(bake)!.Value)),
                answer.MinutesAsTypical(),
                answer.Used.Select(bake => HoverWords.Of(bake, figures, Measures.DoughTemperature, Measures.RiseTime, Measures.Hydration, Measures.Yeast)),
                Palette.Series[2]));
    }

    private static string TitleOf(RiseTimeAnswer answer, DisplayUnit temperature)
    {
        var minutes = answer.ChangeInMinutes(1 / temperature.Factor)!;
        var (low, high) = minutes.Value < 0 ? (-minutes.High, -minutes.Low) : (minutes.Low, minutes.High);
        return $"1 {temperature.Label} warmer: about {Figures.Rounded(Math.Abs(minutes.Value), 0)} min "
            + $"{(minutes.Value < 0 ? "sooner" : "later")} ({Figures.Range(low, high, 0)})";
    }
}
