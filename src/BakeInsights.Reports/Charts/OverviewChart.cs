using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Every question that was answered, with its effect, interval and strength, in the order asked.</summary>
public static class OverviewChart
{
    private const int RowPixels = 62;
    private const int GapPixels = 74;
    private const int MarginPixels = 190;
    private const double NoteRise = 0.14;

    private static readonly IReadOnlyList<(Strength Strength, string Colour, string Marker)> Looks =
    [
        (Strength.Firm, Palette.Series[0].Colour, "circle"),
        (Strength.BorneOut, Palette.Series[1].Colour, "diamond"),
        (Strength.Hint, Palette.Series[2].Colour, "square-open"),
        (Strength.Open, Palette.Ink, "circle-open"),
    ];

    /// <summary>
    /// A panel for each result, for effects in one unit share an axis; a line of words over each dot says what was
    /// compared. Null where no question has an answer.
    /// </summary>
    public static GenericChart? Of(FindingFamily family, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(family);
        if (family.Answers.Count == 0)
        {
            return null;
        }

        var figures = new Figures(units);
        var panels = family.Answers.GroupBy(answer => answer.Result).Select(same => same.ToList()).ToList();
        var shares = ChartPanels.Stacked([.. panels.Select(answers => (double)answers.Count * RowPixels)], GapPixels);
        var layout = ChartFrame.Layout(TitleOf(family));
        layout.SetProperty("height", MarginPixels + (family.Answers.Count * RowPixels) + ((panels.Count - 1) * GapPixels));
        layout.SetProperty("margin", new Dictionary<string, object> { ["l"] = 16, ["r"] = 16, ["b"] = 130, ["t"] = 40 });
        foreach (var (place, answers) in panels.Index())
        {
            var x = ChartFrame.Axis(UnitTitle(answers[0].Result, figures));
            x["anchor"] = ChartPanels.Name("y", place);
            layout.SetProperty(ChartPanels.LayoutName("x", place), x);
            layout.SetProperty(ChartPanels.LayoutName("y", place), new Dictionary<string, object>
            {
                ["title"] = new Dictionary<string, object> { ["text"] = "" },
                ["domain"] = shares[place],
                ["anchor"] = ChartPanels.Name("x", place),
                ["range"] = new[] { answers.Count - 0.5, -0.5 },
                ["showticklabels"] = false,
                ["showgrid"] = false,
                ["zeroline"] = false,
            });
        }

        layout.SetProperty("shapes", panels.Select((_, place) => ChartPanels.AtNothing(ChartPanels.Name("x", place), ChartPanels.Name("y", place))).ToArray());
        layout.SetProperty("annotations", panels.SelectMany((answers, place) => answers.Select((answer, row) => ChartPanels.Note(
            Words(answer, figures), ("paper", 0), (ChartPanels.Name("y", place), row - NoteRise)))).ToArray());
        return ChartFrame.With(layout, Looks.SelectMany(look => Marks(look, panels, figures)));
    }

    private static IEnumerable<Trace> Marks(
        (Strength Strength, string Colour, string Marker) look, IReadOnlyList<List<Finding>> panels, Figures figures)
    {
        var isFirst = true;
        foreach (var (place, answers) in panels.Index())
        {
            var these = answers.Index().Where(one => one.Item.Strength == look.Strength).ToList();
            if (these.Count == 0)
            {
                continue;
            }

            var unit = figures.UnitOf(answers[0].Result.Dimension);
            var trace = Traces.Points(
                    FindingWords.Of(look.Strength),
                    these.Select(one => (object)unit.Difference(one.Item.Effect.Value)),
                    these.Select(one => (double)one.Index),
                    these.Select(one => Traces.Words(one.Item.Question, $"{FindingWords.Effect(one.Item, figures)} ({FindingWords.Interval(one.Item, figures)})")),
                    (look.Colour, look.Marker))
                .WithSpansAcross(
                    these.Select(one => (
                        unit.Difference(one.Item.Effect.Low ?? one.Item.Effect.Value),
                        unit.Difference(one.Item.Effect.Value),
                        unit.Difference(one.Item.Effect.High ?? one.Item.Effect.Value))),
                    look.Colour);
            trace.SetProperty("xaxis", ChartPanels.Name("x", place));
            trace.SetProperty("yaxis", ChartPanels.Name("y", place));
            trace.SetProperty("legendgroup", look.Strength.ToString());
            trace.SetProperty("showlegend", isFirst);
            isFirst = false;
            yield return trace;
        }
    }

    private static string Words(Finding answer, Figures figures) => Traces.Words(
        FindingWords.Compared(answer.Contrast, figures),
        $"{FindingWords.Effect(answer, figures)} ({FindingWords.Interval(answer, figures)}); {FindingWords.Of(answer.Strength)}");

    private static string UnitTitle(Measure result, Figures figures) => result.Dimension == Dimension.Percent
        ? $"{result.Title}, difference (points)"
        : figures.TitleOf($"{result.Title}, difference", result.Dimension);

    private static string TitleOf(FindingFamily family)
    {
        var findings = family.Findings.Count;
        return $"{JournalView.Count(family.Answers.Count, "question")} answered, {(findings == 0 ? "no finding" : JournalView.Count(findings, "finding"))}, "
            + $"{Figures.Rounded(family.Open.Count, 0)} left open. In the order asked; 95 % interval of each question alone";
    }
}
