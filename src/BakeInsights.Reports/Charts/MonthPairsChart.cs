using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>A month against the month before, measure by measure.</summary>
public static class MonthPairsChart
{
    private const int PanelPixels = 84;
    private const int GapPixels = 84;
    private const int MarginPixels = 170;

    /// <summary>
    /// For each measure the bakes of both months as logged and the two means with 95 % intervals, and in words the
    /// difference that the review judged. Null where the review had no month to compare with.
    /// </summary>
    public static GenericChart? Of(MonthReview review, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(review);
        var pairs = review.Pairs;
        if (pairs.Count == 0)
        {
            return null;
        }

        var figures = new Figures(units);
        string[] months = [review.Month, review.Before!];
        var shares = ChartPanels.Stacked([.. pairs.Select(_ => (double)PanelPixels)], GapPixels);
        var layout = ChartFrame.Layout(TitleOf(review));
        layout.SetProperty("height", MarginPixels + (pairs.Count * PanelPixels) + ((pairs.Count - 1) * GapPixels));
        layout.SetProperty("margin", new Dictionary<string, object> { ["l"] = 60, ["r"] = 16, ["b"] = 110, ["t"] = 60 });
        foreach (var (place, pair) in pairs.Index())
        {
            var x = ChartFrame.Axis(figures.TitleOf(pair.Difference.Result));
            x["anchor"] = ChartPanels.Name("y", place);
            layout.SetProperty(ChartPanels.LayoutName("x", place), x);
            var y = CategoryTraces.Axis("", months);
            y["anchor"] = ChartPanels.Name("x", place);
            y["domain"] = shares[place];
            y["range"] = new[] { -0.6, 1.6 };
            layout.SetProperty(ChartPanels.LayoutName("y", place), y);
        }

        layout.SetProperty("annotations", pairs.Select((pair, place) => ChartPanels.Note(
            Traces.Words($"{pair.Difference.Result.Title}: {FindingWords.Effect(pair.Difference, figures)}", $"({FindingWords.Interval(pair.Difference, figures)}); {FindingWords.Of(pair.Difference.Strength)}"),
            ("paper", 0), (ChartPanels.Name("y", place) + " domain", 1))).ToArray());
        return ChartFrame.With(layout, pairs.SelectMany((pair, place) => Panel(pair, place, figures)));
    }

    private static IEnumerable<Trace> Panel(MonthPair pair, int place, Figures figures)
    {
        var measure = pair.Difference.Result;
        var unit = figures.UnitOf(measure.Dimension);
        MonthMean[] months = [pair.Before, pair.Now];
        Trace In(Trace trace, IEnumerable<string> y)
        {
            trace.SetProperty("y", y.ToArray());
            trace.SetProperty("xaxis", ChartPanels.Name("x", place));
            trace.SetProperty("yaxis", ChartPanels.Name("y", place));
            trace.SetProperty("showlegend", place == 0);
            return trace;
        }

        var bakes = Traces.Points(
            "bake", months.SelectMany(month => month.Values).Select(value => (object)unit.Value(value)), [],
            months.SelectMany(month => month.Bakes).Select(bake => HoverWords.Of(bake, figures, measure)), (Palette.Series[2].Colour, "square-open"));
        bakes.SetProperty("opacity", 0.6);
        yield return In(bakes, months.SelectMany(month => month.Bakes.Select(_ => month.Month)));
        yield return In(
            Traces.Points(
                    "mean of the month (95 %)", months.Select(month => (object)unit.Value(month.Mean.Value)), [],
                    months.Select(month => Traces.Words(
                        $"{month.Month}, {JournalView.Count(month.Bakes.Count, "bake")}",
                        $"{figures.WithUnit(measure.Dimension, month.Mean.Value)} ({Ends(month.Mean, unit)})")),
                    Palette.Series[0])
                .WithSpansAcross(
                    months.Select(month => (
                        unit.Value(month.Mean.Low ?? month.Mean.Value), unit.Value(month.Mean.Value), unit.Value(month.Mean.High ?? month.Mean.Value))),
                    Palette.Series[0].Colour),
            months.Select(month => month.Month));
    }

    private static string Ends(Estimate mean, DisplayUnit unit) => Figures.Range(
        mean.Low is { } low ? unit.Value(low) : null, mean.High is { } high ? unit.Value(high) : null, unit.Decimals);

    private static string TitleOf(MonthReview review)
    {
        var changed = review.Pairs.Where(pair => pair.Difference.IsFinding).Select(pair => pair.Difference.Result.Words).ToList();
        var verdict = changed.Count == 0 ? "no difference stands with all questions counted" : $"{string.Join(" and ", changed)} changed";
        return $"{review.Month} against {review.Before}: {verdict}. {JournalView.Count(review.Bakes.Count, "bake")} this month; "
            + "bakes as logged, differences with 95 % intervals";
    }
}
