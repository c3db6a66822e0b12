using System.Globalization;
using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>A measure bake by bake through a month, with the limits that its own scatter sets.</summary>
public static class MonthControlChart
{
    /// <summary>A mark for each bake, another for those in a run that asks for a look; the middle and the limits as lines.</summary>
    public static GenericChart Of(MonthChart chart, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var figures = new Figures(units);
        var unit = figures.UnitOf(chart.Result.Dimension);
        double Shown(double value) => chart.IsAgainstPrediction ? value : unit.Value(value);
        var inRun = chart.Signals.SelectMany(signal => Enumerable.Range(signal.First, signal.Last - signal.First + 1)).ToHashSet();
        int[] places = [.. Enumerable.Range(0, chart.Bakes.Count)];
        object[] ends = [1, chart.Bakes.Count];

        Trace Points(string name, Func<int, bool> which, (string Colour, string Marker) look)
        {
            int[] these = [.. places.Where(which)];
            return Traces.Points(
                name,
                these.Select(place => (object)(place + 1)),
                these.Select(place => Shown(chart.Chart.Values[place])),
                these.Select(place => Hover(chart, place, figures)),
                look);
        }

        Trace Level(string name, double value, string dash)
        {
            var line = Traces.Line(name, ends, [Shown(value), Shown(value)], Palette.Ink, dash);
            line.SetProperty("showlegend", name.Length > 0);
            return line;
        }

        return ChartFrame.Around(
            chart.IsAgainstPrediction ? "Rise time against what the model expects" : $"{chart.Result.Title}, bake by bake",
            "Bake of the month, in order",
            chart.IsAgainstPrediction ? "Standard deviations from expected" : figures.TitleOf(chart.Result),
            [
                Level(chart.IsAgainstPrediction ? "expected" : "middle", chart.Centre, "solid"),
                Level("limits", chart.Limits.High, "dash"),
                Level("", chart.Limits.Low, "dash"),
                Points("bake", place => !inRun.Contains(place), Palette.Series[0]),
                .. inRun.Count > 0 ? [Points("look here", inRun.Contains, Palette.Series[2])] : Array.Empty<Trace>(),
            ]);
    }

    private static string Hover(MonthChart chart, int place, Figures figures)
    {
        var words = HoverWords.Of(chart.Bakes[place], figures, chart.Result);
        return chart.IsAgainstPrediction
            ? $"{words}<br>{chart.Chart.Values[place].ToString("+0.0;−0.0", CultureInfo.InvariantCulture)} standard deviations"
            : words;
    }
}
