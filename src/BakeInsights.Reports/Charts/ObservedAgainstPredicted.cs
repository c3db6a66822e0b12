using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>What was logged against what the fit expects: marks near the line are bakes it explains.</summary>
public static class ObservedAgainstPredicted
{
    /// <summary>The bakes of an answer, in the measure that it explains.</summary>
    public static GenericChart Of(ModelAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var measure = answer.Result;
        var figures = new Figures(units);
        var unit = figures.UnitOf(measure.Dimension);
        double[] observed = [.. answer.Observed.Select(unit.Value)];
        double[] predicted = [.. answer.Expected.Select(unit.Value)];
        double[] ends = [Math.Min(observed.Min(), predicted.Min()), Math.Max(observed.Max(), predicted.Max())];
        return ChartFrame.Around(
            $"{measure.Title}: what the fit expects, and what came",
            figures.TitleOf(measure.Title + " expected", measure.Dimension),
            figures.TitleOf(measure.Title + " logged", measure.Dimension),
            Traces.Line("as expected", ends.Cast<object>(), ends, Palette.Ink, "dash"),
            Traces.Points(
                "bake",
                predicted.Cast<object>(),
                observed,
                answer.Used.Zip(answer.Expected, (bake, value) => HoverWords.Of(bake, figures, measure) + "<br>"
                    + Traces.Words($"Expected: {figures.WithUnit(measure.Dimension, value)}")),
                Palette.Series[0]));
    }
}
