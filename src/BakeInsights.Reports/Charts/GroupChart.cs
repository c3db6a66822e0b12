using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Groups of bakes side by side, in the order of their names.</summary>
public static class GroupChart
{
    /// <summary>
    /// Each bake as logged, each group's plain mean, and where the group itself lies, other causes held still and drawn
    /// towards the mean of all as far as its bakes are few, with the 95 % interval; with two groups its own mean.
    /// </summary>
    public static GenericChart Of(GroupAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var figures = new Figures(units);
        var unit = figures.UnitOf(answer.Result.Dimension);
        var title = answer.Spread is { } spread
            ? $"Spread between them: {Figures.Significant(unit.Difference(spread.Value), 2)} {unit.Label}".TrimEnd() + $" ({DifferenceWords.Interval(spread, unit)})"
            : $"{answer.Largest.To} less {answer.Largest.From}: {DifferenceWords.Interval(answer.Largest.Effect, unit)}";
        string[] names = [.. answer.Groups.Select(group => Traces.Words(group.Group))];
        return ChartFrame.Around(
            Traces.Words(title),
            CategoryTraces.Axis(Traces.Words(answer.ColumnTitle), names),
            figures.TitleOf(answer.Result),
            CategoryTraces.Points(
                "bake", answer.Used.Select(bake => Traces.Words(answer.GroupOf(bake))), answer.Used.Select(bake => unit.Value(answer.Result.Of(bake)!.Value)),
                answer.Used.Select(bake => HoverWords.Of(bake, figures, answer.Result)), Palette.Series[2]),
            CategoryTraces.Points(
                "plain mean", names, answer.Groups.Select(group => unit.Value(group.RawMean)),
                answer.Groups.Select(group => Traces.Words($"{group.Group}: plain mean of {group.Count}")), Palette.Series[1]),
            CategoryTraces.Intervals(
                answer.Spread is null ? "own mean, all else held still (95 %)" : "pooled, all else held still (95 %)",
                names, [.. answer.Groups.Select(group => Place(group, answer.Overall, unit))], Palette.Series[0]));
    }

    private static Estimate Place(GroupResult group, double overall, DisplayUnit unit) => group.Effect is { } effect
        ? new Estimate(unit.Value(overall + effect.Value), unit.Value(overall + effect.Low!.Value), unit.Value(overall + effect.High!.Value))
        : new Estimate(unit.Value(group.OwnMean.Value), unit.Value(group.OwnMean.Low!.Value), unit.Value(group.OwnMean.High!.Value));
}
