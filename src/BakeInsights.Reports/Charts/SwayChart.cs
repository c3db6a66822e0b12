using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>How far an answer hangs on single bakes: the effect with all, and without each.</summary>
public static class SwayChart
{
    private const int RowPixels = 44;
    private const int MarginPixels = 170;

    /// <summary>A dot with its 95 % interval for all bakes and for all but one; odd bakes are named so.</summary>
    public static GenericChart Of(SwayedAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var figures = new Figures(units);
        var unit = figures.UnitOf(answer.Result.Dimension);
        var told = answer.Without.Where(without => without.Effect is not null).ToList();
        var all = Traces.Words($"all {answer.Bakes.Count}");
        string[] names = [.. told.Select(without => Traces.Words($"without {without.Bake.Id}{(without.IsOdd ? ", odd" : "")}"))];
        var layout = ChartFrame.Layout(TitleOf(answer, figures));
        layout.SetProperty("height", MarginPixels + (RowPixels * (names.Length + 1)));
        layout.SetProperty("xaxis", ChartFrame.Axis(figures.TitleOf($"Difference in {answer.Result.Words}", answer.Result.Dimension)));
        var rows = CategoryTraces.Axis("", [.. names.Reverse(), all]);
        rows["range"] = new[] { -0.6, names.Length + 0.6 };
        layout.SetProperty("yaxis", rows);
        layout.SetProperty("shapes", new[] { ChartPanels.AtNothing("x", "y") });
        return ChartFrame.With(
            layout,
            [
                Dots("all bakes (95 %)", [all], [answer.All], answer, unit, figures, Palette.Series[0]),
                Dots("without one bake (95 %)", names, [.. told.Select(without => without.Effect!)], answer, unit, figures, Palette.Series[2]),
            ]);
    }

    private static Trace Dots(
        string name, IReadOnlyList<string> rows, IReadOnlyList<Estimate> effects, SwayedAnswer answer, DisplayUnit unit, Figures figures,
        (string Colour, string Marker) look)
    {
        var trace = Traces.Points(
            name,
            effects.Select(effect => (object)unit.Difference(effect.Value)),
            [],
            rows.Zip(effects, (row, effect) => $"{row}<br>{Traces.Words(FindingWords.Change(answer.Result, effect, figures))}"),
            look);
        trace.SetProperty("y", rows.ToArray());
        return trace.WithSpansAcross(
            effects.Select(effect => (
                unit.Difference(effect.Low ?? effect.Value), unit.Difference(effect.Value), unit.Difference(effect.High ?? effect.Value))),
            look.Colour);
    }

    private static string TitleOf(SwayedAnswer answer, Figures figures)
    {
        var effects = answer.Without.Select(without => without.Effect).OfType<Estimate>().ToList();
        var lost = answer.Without.Count - effects.Count;
        var signs = effects.Append(answer.All).Select(effect => effect is { Low: > 0 } ? 1 : effect is { High: < 0 } ? -1 : 0).Distinct().ToList();
        var verdict = lost > 0 ? "without one of these bakes the journal couldn't tell"
            : signs.Count == 1 ? "the answer stays the same without each of the bakes that sway it most"
            : "the answer hangs on single bakes";
        return Traces.Words($"{FindingWords.Compared(answer.Contrast, figures)}: {FindingWords.Change(answer.Result, answer.All, figures)}; "
            + $"{verdict}. {JournalView.Count(answer.Bakes.Count, "bake")}, 95 % intervals");
    }
}
