using BakeInsights.Inference;
using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Specific volume against hydration.</summary>
public static class LoafVolumeChart
{
    private const int CurvePoints = 60;

    // A cool, a middling and a warm dough of this journal, all three among those that were baked.
    private static readonly double[] Shares = [0.1, 0.5, 0.9];

    /// <summary>
    /// The fitted curves at three dough temperatures of the journal, each bake marked for the one it is nearest to.
    /// Null when the answer lacks a term for hydration or for temperature.
    /// </summary>
    public static GenericChart? AgainstHydration(LoafVolumeAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Coefficient(LoafVolume.HydrationTerm) is null || answer.Coefficient(LoafVolume.DoughTemperatureTerm) is null)
        {
            return null;
        }

        var figures = new Figures(units);
        var celsius = answer.Used.Select(bake => Measures.DoughTemperature.Of(bake)!.Value).ToList();
        var shown = Shares.Select(share => Quantiles.Of(celsius, share)).ToList();
        var nearest = celsius.Select(value => shown.IndexOf(shown.MinBy(level => Math.Abs(level - value)))).ToList();
        return ChartFrame.Around(
            TitleOf(answer, figures),
            figures.TitleOf(Measures.Hydration),
            figures.TitleOf(Measures.SpecificVolume),
            shown.Index().SelectMany(level => TracesAt(answer, figures, level.Item, level.Index, nearest)));
    }

    /// <summary>The answer with its interval and its bakes.</summary>
    internal static string TitleOf(LoafVolumeAnswer answer, Figures figures)
    {
        var bakes = JournalView.Count(answer.UsedCount, "bake");
        return answer.BestHydration is { } best
            ? $"Largest loaves at {figures.WithUnit(Dimension.Temperature, ModelAnswer.CentreTemperatureC)} near {Figures.Rounded(best.Value, 0)} % hydration "
                + $"({Figures.Range(best.Low, best.High, 0)}; 95 % interval, {bakes})"
            : $"No best hydration among those baked ({bakes})";
    }

    private static IEnumerable<Trace> TracesAt(
        LoafVolumeAnswer answer, Figures figures, double celsius, int series, List<int> nearest)
    {
        var volume = figures.UnitOf(Dimension.SpecificVolume);
        var look = Palette.Series[series];
        var name = figures.WithUnit(Dimension.Temperature, celsius);
        var hydration = answer.RangeOf(Measures.Hydration)!;
        double[] grid =
        [
            .. Enumerable.Range(0, CurvePoints)
                .Select(i => hydration.Least + (i * (hydration.Most - hydration.Least) / (CurvePoints - 1))),
        ];
        var curve = answer.OverHydration(grid, celsius);
        var these = answer.Used.Where((_, row) => nearest[row] == series).ToList();
        string[] dashes = ["dot", "solid", "dash"];
        yield return Traces.Line(
            $"dough of {name}", grid.Cast<object>(), curve.Select(p => volume.Value(p.Estimate)), look.Colour, dashes[series]);
        yield return Traces.Points(
            $"bakes near {name}",
            these.Select(bake => (object)Measures.Hydration.Of(bake)!.Value),
            these.Select(bake => volume.Value(Measures.SpecificVolume.Of(bake)!.Value)),
            these.Select(bake => HoverWords.Of(bake, figures, Measures.Hydration, Measures.DoughTemperature, Measures.SpecificVolume)),
            look);
    }
}
