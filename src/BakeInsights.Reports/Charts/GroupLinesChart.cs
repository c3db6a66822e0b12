using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>A panel for each group of bakes, in the order of their names: its bakes, its line, and the common line.</summary>
public static class GroupLinesChart
{
    private const int Columns = 2;
    private const int PanelPixels = 210;
    private const int GapPixels = 48;
    private const int MarginPixels = 124;

    // What half of a phone's width has room for.
    private const int LongestName = 18;

    /// <summary>
    /// A result along a cause that the answer holds still, such as rise time against dough temperature bench by bench.
    /// Null where that cause is no single term of the answer.
    /// </summary>
    public static GenericChart? Along(GroupAnswer answer, Measure cause, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Along(cause) is not { } lines)
        {
            return null;
        }

        var figures = new Figures(units);
        var rows = (lines.Groups.Count + Columns - 1) / Columns;
        var shares = ChartPanels.Stacked([.. Enumerable.Repeat((double)PanelPixels, rows)], GapPixels);
        var layout = ChartFrame.Layout(TitleOf(answer, figures));
        layout.SetProperty("height", MarginPixels + (rows * PanelPixels) + ((rows - 1) * GapPixels));
        layout.SetProperty("margin", new Dictionary<string, object> { ["l"] = 60, ["r"] = 16, ["b"] = 74, ["t"] = 50 });
        layout.SetProperty("showlegend", false);
        for (var column = 0; column < Columns; column++)
        {
            // Two titles side by side have to fit a phone.
            var x = ChartFrame.Axis("");
            x["title"] = new Dictionary<string, object>
            {
                ["text"] = figures.TitleOf(cause).Replace(" ", "<br>", StringComparison.Ordinal).Replace("<br>(", " (", StringComparison.Ordinal),
                ["standoff"] = 8,
                ["font"] = new Dictionary<string, object> { ["size"] = 11 },
            };
            x["domain"] = column == 0 ? new[] { 0, 0.48 } : [0.52, 1];
            x["anchor"] = ChartPanels.Name("y", rows - 1);
            x["matches"] = "x";
            layout.SetProperty(ChartPanels.LayoutName("x", column), x);
        }

        for (var row = 0; row < rows; row++)
        {
            var y = ChartFrame.Axis(figures.TitleOf(answer.Result));
            y["domain"] = shares[row];
            y["matches"] = "y";
            layout.SetProperty(ChartPanels.LayoutName("y", row), y);
        }

        layout.SetProperty("annotations", lines.Groups.Select((line, place) => ChartPanels.Note(
            Traces.Words(Short(line.Group.Group), JournalView.Count(line.Group.Count, "bake")),
            (ChartPanels.Name("x", place % Columns) + " domain", 0), (ChartPanels.Name("y", place / Columns) + " domain", 1), isBold: true)).ToArray());
        return ChartFrame.With(layout, lines.Groups.SelectMany((line, place) => Panel(lines, line, place, figures)));
    }

    private static IEnumerable<Trace> Panel(GroupLines lines, GroupLine line, int place, Figures figures)
    {
        var (cause, result) = (figures.UnitOf(lines.Cause.Dimension), figures.UnitOf(lines.Answer.Result.Dimension));
        double[] x = [.. lines.At.Select(cause.Value)];
        var name = Traces.Words(line.Group.Group);
        Trace In(Trace trace)
        {
            trace.SetProperty("xaxis", ChartPanels.Name("x", place % Columns));
            trace.SetProperty("yaxis", ChartPanels.Name("y", place / Columns));
            return trace;
        }

        yield return In(Traces.Band(
            $"{name}: its line (95 %)", x, line.Line.Select(at => result.Value(at.Low!.Value)), line.Line.Select(at => result.Value(at.High!.Value)),
            (Palette.Series[0].Colour, 0.2, "solid")));
        yield return In(Traces.Line(
            $"{name}: common line", x.Cast<object>(), lines.Common.Select(result.Value), Palette.Ink, "dash"));
        yield return In(Traces.Line(
            $"{name}: its line", x.Cast<object>(), line.Line.Select(at => result.Value(at.Value)), Palette.Series[0].Colour));
        yield return In(Traces.Points(
            $"{name}: bakes", line.Bakes.Select(bake => (object)cause.Value(bake.Cause)), line.Bakes.Select(bake => result.Value(bake.Result)),
            line.Bakes.Select(bake => HoverWords.Of(bake.Bake, figures, lines.Cause, lines.Answer.Result)), Palette.Series[2]));
    }

    private static string Short(string name) => name.Length <= LongestName ? name : name[..(LongestName - 1)] + "…";

    private static string TitleOf(GroupAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(answer.Result.Dimension);
        var bakes = JournalView.Count(answer.Used.Count, "bake");
        var apart = answer.Spread is { } spread
            ? $"A {answer.ColumnTitle} typically lies {Figures.Significant(unit.Difference(spread.Value), 2)} {unit.Label} from the common line ({DifferenceWords.Interval(spread, unit)}"
            : $"{answer.Largest.To} less {answer.Largest.From}: {DifferenceWords.Bare(answer.Largest.Effect, unit)} {unit.Label} ({DifferenceWords.Interval(answer.Largest.Effect, unit)}";
        return Traces.Words($"{apart}; 95 % interval, {bakes}), other causes held still. Dashed: the common line; solid, shaded: each one's own, 95 % interval");
    }
}
