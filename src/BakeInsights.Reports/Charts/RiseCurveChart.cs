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
}
