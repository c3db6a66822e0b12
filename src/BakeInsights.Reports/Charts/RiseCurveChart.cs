using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Rise curves against the clock.</summary>
public static class RiseCurveChart
{
    private const int CurvePoints = 121;

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
        var (from, to) = (answer.Series.Minutes[0], Math.Max(answer.Series.Minutes[^1], fit.Doubling?.Value ?? 0));
        double[] minutes = [.. Enumerable.Range(0, CurvePoints).Select(i => from + (i * (to - from) / (CurvePoints - 1)))];
        var look = Palette.Series[0];
        return ChartFrame.Around(
            $"{title}: {RiseCurvesView.Doubled(fit)}",
            "Minutes",
            "Expansion (size / starting size)",
            [
                .. DoublingBand(fit, from, to),
                Traces.Line("ceiling", [from, to], [fit.Ceiling.Value, fit.Ceiling.Value], Palette.Series[1].Colour, "dash"),
                Traces.Line($"fitted, {fit.Curve.Name}", minutes.Cast<object>(), minutes.Select(fit.Expansion), look.Colour),
                Traces.Points(
                    "reading",
                    answer.Series.Minutes.Cast<object>(),
                    answer.Expansions,
                    answer.Series.Minutes.Zip(answer.Expansions, (minute, size) => Traces.Words(
                        $"{Figures.Rounded(minute, 0)} min", $"{Figures.Rounded(size, 2)} times the start")),
                    Palette.Series[2]),
            ]);
    }

    // From the start up to doubled, over the minutes of the interval; an end without bound goes to the chart's edge.
    private static IEnumerable<Trace> DoublingBand(RiseCurveFit fit, double from, double to)
    {
        if (fit.Doubling is not { } doubling)
        {
            yield break;
        }

        double[] ends = [doubling.Low ?? from, doubling.High ?? to];
        yield return Traces.Band("time to double (95 %)", ends, [1, 1], [2, 2], Palette.Sheer(Palette.Series[0].Colour, 0.25));
    }
}
