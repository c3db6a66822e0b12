using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>A chart of a lesson's own numbers, where no journal chart fits: marks, intervals and lines.</summary>
public static class LessonChart
{
    /// <summary>The series in the frame of all charts; colours and markers go by their order.</summary>
    /// <param name="title">What is to be seen, a sentence made from the numbers; it becomes the caption.</param>
    /// <param name="xTitle">What the values across are, with their unit.</param>
    /// <param name="yTitle">What the values up are, with their unit.</param>
    /// <param name="series">The series, three or fewer of each kind so that colours differ.</param>
    public static GenericChart Of(string title, string xTitle, string yTitle, params IReadOnlyList<LessonSeries> series)
    {
        ArgumentNullException.ThrowIfNull(series);
        return ChartFrame.Around(Traces.Words(title), xTitle, yTitle, series.Select((one, place) => TraceOf(one, place, xTitle, yTitle)));
    }

    private static Trace TraceOf(LessonSeries one, int place, string xTitle, string yTitle)
    {
        var look = Palette.Series[place % Palette.Series.Count];
        if (one.IsLine)
        {
            return Traces.Line(one.Name, one.X.Cast<object>(), one.Y, look.Colour, place == 0 ? "solid" : "dash");
        }

        var words = one.X.Zip(one.Y, (x, y) => Traces.Words(
            $"{xTitle}: {Figures.Significant(x)}", $"{yTitle}: {Figures.Significant(y)}"));
        var trace = Traces.Points(one.Name, one.X.Cast<object>(), one.Y, words, look);
        return one.Spans.Count == 0
            ? trace
            : trace.WithSpans(one.Spans.Zip(one.Y, (span, y) => (span.Low, y, span.High)), look.Colour);
    }
}
