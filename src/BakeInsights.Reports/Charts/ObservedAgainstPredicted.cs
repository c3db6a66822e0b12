using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>What was logged against what the fit expects: marks near the line are bakes it explains.</summary>
public static class ObservedAgainstPredicted
{
    /// <summary>The bakes of an answer, in the measure that it explains.</summary>
    public static GenericChart Of(ModelAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Of(answer.Result, answer.Used, answer.Observed, answer.Expected, units);
    }

    /// <summary>The doughs of a kitchen; null where no bake was used.</summary>
    public static GenericChart? Of(KitchenDoughTemperature learned, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(learned);
        var measure = Measures.DoughTemperature;
        return learned.Used.Count == 0
            ? null
            : Of(measure, learned.Used, [.. learned.Used.Select(bake => measure.Of(bake)!.Value)], learned.Expected, units);
    }

    private static GenericChart Of(
        Measure measure, IReadOnlyList<Bake> used, IReadOnlyList<double> logged, IReadOnlyList<double> expected, UnitSystem units)
    {
        var figures = new Figures(units);
        var unit = figures.UnitOf(measure.Dimension);
        double[] observed = [.. logged.Select(unit.Value)];
        double[] predicted = [.. expected.Select(unit.Value)];
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
                used.Zip(expected, (bake, value) => HoverWords.Of(bake, figures, measure) + "<br>"
                    + Traces.Words($"Expected: {figures.WithUnit(measure.Dimension, value)}")),
                Palette.Series[0]));
    }
}
