using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>A result against a column of the journal.</summary>
public static class ColumnChart
{
    private const int CurvePoints = 60;

    /// <summary>
    /// Each bake, moved to the average block and the average of the other causes; for levels their means with intervals,
    /// for a line or a curve the fitted one with the band of its mean.
    /// </summary>
    public static GenericChart Of(ColumnAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var figures = new Figures(units);
        var title = TitleOf(answer, figures);
        var x = figures.TitleOf(answer.ColumnTitle, answer.ColumnDimension);
        var y = figures.TitleOf(answer.Result);
        return answer.Form == ColumnForm.Levels
            ? ChartFrame.Around(title, CategoryTraces.Axis(answer.ColumnTitle, NamesOf(answer, figures)), y, Levels(answer, figures))
            : ChartFrame.Around(title, x, y, Along(answer, figures));
    }

    private static string TitleOf(ColumnAnswer answer, Figures figures)
    {
        if (answer.Best is { } best)
        {
            var unit = figures.UnitOf(answer.ColumnDimension);
            double? In(double? value) => value is { } number ? unit.Value(number) : null;
            return $"Highest near {answer.ColumnTitle} {Figures.Significant(unit.Value(best.Value), 2)} ({Figures.Range(In(best.Low), In(best.High), 1)})";
        }

        var largest = answer.Largest;
        var interval = DifferenceWords.Interval(largest.Effect, figures.UnitOf(answer.Result.Dimension));
        return $"{Level(largest.To, largest.ToNumber)} less {Level(largest.From, largest.FromNumber)}: {interval}";

        string Level(string level, double? number) => DifferenceWords.Level(level, number, answer.ColumnDimension, figures);
    }

    private static IEnumerable<Trace> Levels(ColumnAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(answer.Result.Dimension);
        var shown = NamesOf(answer, figures);
        var names = answer.Levels.Select((level, i) => (level.Level, Name: shown[i])).ToDictionary(level => level.Level, level => level.Name);
        yield return CategoryTraces.Points(
            BakeTitle(answer), answer.Used.Select(bake => names[answer.LevelOf(bake)]), answer.ResultsHeldStill().Select(unit.Value),
            answer.Used.Select(bake => HoverWords.Of(bake, figures, answer.Result)), Palette.Series[2]);
        yield return CategoryTraces.Intervals(
            "mean (95 %)", answer.Levels.Select(level => names[level.Level]), [.. answer.Levels.Select(level => In(level.Mean, unit))], Palette.Series[0]);
    }

    private static IReadOnlyList<string> NamesOf(ColumnAnswer answer, Figures figures) =>
        [.. answer.Levels.Select(level => Traces.Words(DifferenceWords.Level(level.Level, level.Number, answer.ColumnDimension, figures)))];

    private static IEnumerable<Trace> Along(ColumnAnswer answer, Figures figures)
    {
        var (unit, column) = (figures.UnitOf(answer.Result.Dimension), figures.UnitOf(answer.ColumnDimension));
        double[] numbers = [.. answer.Used.Select(bake => answer.NumberOf(bake)!.Value)];
        var (least, most) = (numbers.Min(), numbers.Max());
        CurvePoint[] curve = [.. Enumerable.Range(0, CurvePoints).Select(i => answer.At(least + (i * (most - least) / (CurvePoints - 1))))];
        double[] x = [.. curve.Select(point => column.Value(point.X!.Value))];
        var look = Palette.Series[0];
        yield return Traces.Band(
            Palette.MeanName, x, curve.Select(p => unit.Value(p.Mean.Low)), curve.Select(p => unit.Value(p.Mean.High)), Palette.Mean);
        yield return Traces.Line("fitted", x.Cast<object>(), curve.Select(p => unit.Value(p.Estimate)), look.Colour);
        yield return Traces.Points(
            BakeTitle(answer), numbers.Select(number => (object)column.Value(number)), answer.ResultsHeldStill().Select(unit.Value),
            answer.Used.Select(bake => HoverWords.Of(bake, figures, answer.Result)), Palette.Series[2]);
    }

    private static string BakeTitle(ColumnAnswer answer) =>
        answer.HeldStill.Count > 0 || answer.Blocks.Count > 0 ? "bake, moved to the average of all else" : "bake";

    private static Estimate In(Estimate mean, DisplayUnit unit) =>
        new(unit.Value(mean.Value), unit.Value(mean.Low!.Value), unit.Value(mean.High!.Value));
}
