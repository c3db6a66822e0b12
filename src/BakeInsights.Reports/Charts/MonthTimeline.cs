using System.Globalization;
using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Dough temperature and rise time through a month, one above the other.</summary>
public static class MonthTimeline
{
    private const int HeightPixels = 560;

    /// <summary>A mark for each bake; a rise time known only to lie between two looks has a stroke down to the earlier one.</summary>
    public static GenericChart Of(IReadOnlyList<Bake> bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var figures = new Figures(units);
        var temperature = Panel(Measures.DoughTemperature, bakes, figures, Palette.Series[2]);
        var rise = Panel(Measures.RiseTime, bakes, figures, Palette.Series[0]);
        rise.SetProperty("yaxis", "y2");
        rise.SetProperty("error_y", Spans([.. bakes.Where(bake => Measures.RiseTime.Of(bake) is not null)]));

        var layout = ChartFrame.Layout("Dough temperature and rise time, bake by bake");
        layout.SetProperty("height", HeightPixels);
        var days = ChartFrame.Axis("Day");
        days["anchor"] = "y2";
        layout.SetProperty("xaxis", days);
        layout.SetProperty("yaxis", AxisOf(Measures.DoughTemperature, figures, 0.56, 1));
        layout.SetProperty("yaxis2", AxisOf(Measures.RiseTime, figures, 0, 0.46));
        return ChartFrame.With(layout, [temperature, rise]);
    }

    private static Trace Panel(Measure measure, IReadOnlyList<Bake> bakes, Figures figures, (string Colour, string Marker) look)
    {
        var these = bakes.Where(bake => measure.Of(bake) is not null).ToList();
        return Traces.Points(
            measure.Title,
            these.Select(bake => (object)bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            these.Select(bake => figures.UnitOf(measure.Dimension).Value(measure.Of(bake)!.Value)),
            these.Select(bake => HoverWords.Of(bake, figures, Measures.DoughTemperature, Measures.RiseTime)),
            look);
    }

    private static Dictionary<string, object> Spans(IReadOnlyList<Bake> bakes) => new()
    {
        ["type"] = "data",
        ["symmetric"] = false,
        ["array"] = bakes.Select(_ => 0.0).ToArray(),
        ["arrayminus"] = bakes
            .Select(bake => bake[BakeColumns.RiseNotReady] is { } notReady ? Measures.RiseTime.Of(bake)!.Value - notReady : 0)
            .ToArray(),
        ["width"] = 0,
        ["thickness"] = 1.5,
    };

    private static Dictionary<string, object> AxisOf(Measure measure, Figures figures, double bottom, double top)
    {
        var axis = ChartFrame.Axis(figures.TitleOf(measure));
        axis["domain"] = new[] { bottom, top };
        return axis;
    }
}
