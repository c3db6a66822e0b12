using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Rise curves against the clock.</summary>
public static class RiseCurveChart
{
    private const int CurvePoints = 121;

    // How far above the highest value a ceiling's interval is drawn, in rises.
    private const double CeilingRoom = 1.25;

    private static readonly string[] Dashes = ["solid", "dash", "dot"];

    /// <summary>
    /// Curves from the start on, and where the dough has doubled: at most as many as there are colours.
    /// </summary>
    /// <param name="curves">The curves.</param>
    /// <param name="untilMin">Where the chart ends, in minutes, more than 0.</param>
    public static GenericChart Of(IReadOnlyList<RiseCurve> curves, double untilMin)
    {
        ArgumentNullException.ThrowIfNull(curves);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(untilMin);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(curves.Count, Palette.Series.Count, nameof(curves));
        double[] minutes = [.. Enumerable.Range(0, CurvePoints).Select(i => i * untilMin / (CurvePoints - 1))];
        return ChartFrame.Around(
            "How far the dough has risen (1 is doubled)",
            "Minutes",
            "Rise (volume / volume at the start - 1)",
            [
                .. curves.Index().Select(curve => Traces.Line(
                    curve.Item.Name,
                    minutes.Cast<object>(),
                    minutes.Select(curve.Item.Rise),
                    Palette.Series[curve.Index].Colour,
                    Dashes[curve.Index])),
                Traces.Line("doubled", [0.0, untilMin], [1.0, 1.0], Palette.Ink, "dot"),
            ]);
    }

    /// <summary>
    /// The readings of one dough, its fitted curve, the interval of the time to double, and the ceiling. Null when the
    /// attempt has no curve.
    /// </summary>
    public static GenericChart? Of(RiseCurveAttempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        return attempt.Outcome.Match<GenericChart?>(answer => Of(RiseCurvesView.TitleOf(attempt), answer), _ => null);
    }

    private static GenericChart Of(string title, RiseCurveAnswer answer)
    {
        var fit = answer.Chosen;
        var series = answer.Series;
        var last = series.CutMinutes.Length > 0 ? series.CutMinutes[^1] : series.Minutes[^1];
        var (from, to) = (series.Minutes[0], Math.Max(last, fit.Doubling?.Value ?? 0));
        double[] minutes = [.. Enumerable.Range(0, CurvePoints).Select(i => from + (i * (to - from) / (CurvePoints - 1)))];
        return ChartFrame.Around(
            $"{title}: {RiseCurvesView.Doubled(fit)}, {series.Minutes.Length} readings"
                + (series.CutMinutes.Length > 0 ? $", {series.CutMinutes.Length} after the collapse" : ""),
            "Minutes",
            "Expansion (size / starting size)",
            [
                CeilingBand(answer, from, to),
                .. DoublingBand(fit, from, to),
                Traces.Line("ceiling", [from, to], [fit.Ceiling.Value, fit.Ceiling.Value], Palette.Series[1].Colour, "dash"),
                Traces.Line($"fitted, {fit.Curve.Name}", minutes.Cast<object>(), minutes.Select(fit.Expansion), Palette.Series[0].Colour),
                Readings("reading", series.Minutes, answer.Expansions, Palette.Series[2]),
                .. series.CutMinutes.Length > 0
                    ? [Readings("cut off after the collapse", series.CutMinutes, answer.CutExpansions, (Palette.Series[2].Colour, Palette.Series[2].Marker + "-open"))]
                    : Array.Empty<Trace>(),
            ]);
    }

    private static Trace Readings(string name, IReadOnlyList<double> minutes, IReadOnlyList<double> sizes, (string Colour, string Marker) look) =>
        Traces.Points(
            name,
            minutes.Cast<object>(),
            sizes,
            minutes.Zip(sizes, (minute, size) => Traces.Words($"{Figures.Rounded(minute, 0)} min", $"{Figures.Rounded(size, 2)} times the start")),
            look);

    // An end without bound, or one far above everything read, goes to the chart's edge and is said to go on.
    private static Trace CeilingBand(RiseCurveAnswer answer, double from, double to)
    {
        var ceiling = answer.Chosen.Ceiling;
        var edge = 1 + (CeilingRoom * (Math.Max(answer.Expansions.Max(), ceiling.Value) - 1));
        var (low, high) = (Math.Max(ceiling.Low ?? 1, 1), Math.Min(ceiling.High ?? edge, edge));
        return Traces.Band(
            ceiling.High is { } end && end <= edge ? "ceiling (95 %), dashed edge" : "ceiling (95 %), dashed edge, goes on above",
            [from, to], [low, low], [high, high], (Palette.Series[1].Colour, 0.12, "dash"));
    }

    // From the start up to doubled, over the minutes of the interval; an end without bound goes to the chart's edge.
    private static IEnumerable<Trace> DoublingBand(RiseCurveFit fit, double from, double to)
    {
        if (fit.Doubling is not { } doubling)
        {
            yield break;
        }

        double[] ends = [doubling.Low ?? from, doubling.High ?? to];
        yield return Traces.Band("time to double (95 %), solid edge", ends, [1, 1], [2, 2], Palette.Mean);
    }
}
