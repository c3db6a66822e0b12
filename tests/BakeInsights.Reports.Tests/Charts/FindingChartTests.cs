using BakeInsights.TestKit;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class FindingChartTests
{
    private const double MlPerGInCuInPerOz = 28.349523125 / 16.387064;

    private static readonly Journal Class = Journal.Read(Repository.Path("data-demo/osier-yard"));
    private static readonly MonthReview Review = ReviewOf(Class);

    [Fact]
    public void Stopped_rises_are_arrows_and_strokes_lie_between_two_looks()
    {
        var answer = RiseTime.Ask(Class.Bakes).Value;
        var figure = new Figure(RiseTimeChart.AgainstDoughTemperature(answer, UnitSystem.Metric)!);
        var looks = answer.LooksAsTypical();
        var stopped = looks.Where(look => look.ReadyMin is null).ToList();
        Assert.Equal(Class.Bakes.Count(bake => bake.RiseOutcome == RiseOutcome.Stopped), stopped.Count);
        var hollow = figure.Trace("stopped, arrow: longer than this");
        Assert.Equal(stopped.Select(look => look.NotReadyMin!.Value), Figure.Numbers(hollow["y"]));
        Assert.Equal(stopped.Count, figure.Layout["annotations"]!.AsArray().Count);
        Assert.Equal(
            looks.Take(answer.Used.Count).Select(look => (Math.Round(look.NotReadyMin!.Value, 9), Math.Round(look.ReadyMin!.Value, 9))),
            Figure.Ends(figure.Trace("bake, moved to the typical dough"), "y"));
    }

    [Fact]
    public void A_look_moves_as_its_bake_does()
    {
        var answer = RiseTime.Ask(Class.Bakes).Value;
        Assert.All(answer.Used.Zip(answer.MinutesAsTypical(), answer.LooksAsTypical()), one =>
        {
            var (bake, moved, look) = one;
            Assert.Equal(bake, look.Bake);
            Assert.Equal(moved, (look.NotReadyMin!.Value + look.ReadyMin!.Value) / 2, 1e-9 * moved);
            Assert.Equal((bake[BakeColumns.RiseNotReady] ?? bake[BakeColumns.Rise]!.Value) / bake[BakeColumns.Rise]!.Value, look.NotReadyMin.Value / look.ReadyMin.Value, 1e-9);
        });
    }

    [Fact]
    public void Readings_after_a_collapse_are_hollow_and_the_ceiling_has_its_band()
    {
        var collapsed = RiseCurves.Of(Demo.Journal).Single(attempt => attempt.BakeId == "ML-12");
        var answer = collapsed.Outcome.Value;
        var figure = new Figure(RiseCurveChart.Of(collapsed)!);
        var cut = figure.Trace("cut off after the collapse");
        Assert.EndsWith("-open", (string)cut["marker"]!["symbol"]!, StringComparison.Ordinal);
        Assert.Equal(answer.Series.CollapsedCount, answer.Series.CutMinutes.Length);
        Assert.Equal(answer.Series.CutMinutes, Figure.Numbers(cut["x"]));
        Assert.Equal(answer.CutExpansions, Figure.Numbers(cut["y"]));
        var band = Figure.Numbers(figure.Trace("ceiling (95 %), dashed edge")["y"]);
        Assert.Equal((answer.Chosen.Ceiling.Low, answer.Chosen.Ceiling.High), (band[0], band[^1]));
    }

    [Fact]
    public void An_open_ceiling_goes_to_the_edge_and_says_so()
    {
        var proof = RiseCurves.Of(Demo.Journal).Single(attempt => attempt.Stage == RiseStage.Proof);
        Assert.Contains(new Figure(RiseCurveChart.Of(proof)!).Traces, trace => (string?)trace["name"] == "ceiling (95 %), dashed edge, goes on above");
    }

    [Theory]
    [InlineData(UnitSystem.Metric, 1)]
    [InlineData(UnitSystem.Us, MlPerGInCuInPerOz)]
    public void The_surface_holds_the_fits_numbers_inside_the_bakes_and_nothing_outside(UnitSystem units, double factor)
    {
        var answer = LoafVolume.Ask(Class.Bakes).Value;
        var surface = answer.Surface()!;
        var figure = new Figure(LoafSurfaceChart.Of(answer, units)!);
        var rows = figure.Trace("fitted")["z"]!.AsArray();
        Assert.Equal(surface.TemperaturesC.Count, rows.Count);
        for (var t = 0; t < rows.Count; t++)
        {
            for (var h = 0; h < surface.HydrationsPct.Count; h++)
            {
                Assert.Equal(surface.Volumes[t][h] * factor, (double?)rows[t]![h], (a, b) => a is null ? b is null : Math.Abs(a.Value - b!.Value) < 1e-9);
            }
        }

        Assert.Null(surface.Volumes[0][0]);
        var middle = answer.Typical.With(Measures.Hydration, surface.HydrationsPct[30]).With(Measures.DoughTemperature, surface.TemperaturesC[23]);
        Assert.Equal(answer.At(middle).Estimate, surface.Volumes[23][30]!.Value, 1e-9);
        var edge = figure.Trace("edge of what was baked");
        Assert.Equal([.. surface.Baked.Select(corner => corner.HydrationPct), surface.Baked[0].HydrationPct], Figure.Numbers(edge["x"]));
        Assert.Equal(answer.Used.Select(bake => Measures.Hydration.Of(bake)!.Value), Figure.Numbers(figure.Trace("bake")["x"]));
    }

    [Fact]
    public void Each_group_has_a_panel_with_its_bakes_its_line_and_the_common_one()
    {
        var answer = GroupQuestion.Ask(Class.Bakes, Measures.RiseTime).Value;
        var lines = answer.Along(Measures.DoughTemperature)!;
        var figure = new Figure(GroupLinesChart.Along(answer, Measures.DoughTemperature, UnitSystem.Us)!);
        Assert.Equal(answer.Used.Count, lines.Groups.Sum(line => line.Bakes.Count));
        foreach (var line in lines.Groups)
        {
            var name = line.Group.Group;
            Assert.Equal(lines.Common, Figure.Numbers(figure.Trace($"{name}: common line")["y"]));
            Assert.Equal(line.Line.Select(at => at.Value), Figure.Numbers(figure.Trace($"{name}: its line")["y"]));
            Assert.Equal(line.Bakes.Select(bake => (bake.Cause * 1.8) + 32), Figure.Numbers(figure.Trace($"{name}: bakes")["x"]), (a, b) => Math.Abs(a - b) < 1e-9);

            // A line's distance from the common one is the group's effect in percent.
            Assert.All(line.Line.Zip(lines.Common), at => Assert.Equal(line.Group.EffectPct!.Value, 100 * ((at.First.Value / at.Second) - 1), 1e-6));
        }

        Assert.Equal(["door bench<br>26 bakes", "middle bench<br>19 bakes", "window bench<br>19 bakes"], figure.Notes.Select(note => note.Replace("<b>", "", StringComparison.Ordinal).Replace("</b>", "", StringComparison.Ordinal)));
        Assert.Null(answer.Along(Measures.RoomTemperature));
    }

    [Fact]
    public void The_effect_without_a_bake_is_that_of_the_journal_without_it()
    {
        const string question = "rise_time.dough_temperature";
        var answer = SwayedAnswer.Of(Class.Bakes, question).Value;
        Assert.Equal(CauseAnswers.Of(Class.Bakes).Answers.Single(one => one.Name == question).Effect, answer.All);
        var figure = new Figure(SwayChart.Of(answer, UnitSystem.Metric));
        Assert.Equal(answer.Without.Select(one => one.Effect!.Value), Figure.Numbers(figure.Trace("without one bake (95 %)")["x"]));
        Assert.Equal((Math.Round(answer.All.Low!.Value, 9), Math.Round(answer.All.High!.Value, 9)), Figure.Ends(figure.Trace("all bakes (95 %)"), "x")[0]);
        Assert.All(answer.Without, one =>
        {
            var slope = RiseTime.Ask([.. Class.Bakes.Where(bake => bake != one.Bake)]).Value.Coefficient(RiseTime.DoughTemperatureTerm)!.Estimate;
            var all = RiseTime.Ask(Class.Bakes).Value.Coefficient(RiseTime.DoughTemperatureTerm)!.Estimate;
            Assert.Equal(Math.Sign(slope - all), Math.Sign(one.Effect!.Value - answer.All.Value));
        });
        Assert.Throws<ArgumentException>(() => SwayedAnswer.Of(Class.Bakes, "nothing.of_the_kind"));
    }

    [Fact]
    public void Both_months_show_their_bakes_and_means_and_the_judged_difference()
    {
        var figure = new Figure(MonthPairsChart.Of(Review, UnitSystem.Metric)!);
        Assert.Equal(5, Review.Pairs.Count);
        foreach (var (place, pair) in Review.Pairs.Index())
        {
            var (bakes, means) = (figure.Traces[2 * place], figure.Traces[(2 * place) + 1]);
            Assert.Equal([.. pair.Before.Values, .. pair.Now.Values], Figure.Numbers(bakes["x"]));
            Assert.Equal([pair.Before.Mean.Value, pair.Now.Mean.Value], Figure.Numbers(means["x"]));
            Assert.Equal([pair.Before.Month, pair.Now.Month], Figure.Texts(means["y"]));
            Assert.Equal(
                new[] { pair.Before, pair.Now }.Select(month => (Math.Round(month.Mean.Low!.Value, 9), Math.Round(month.Mean.High!.Value, 9))),
                Figure.Ends(means, "x"));
        }

        // The difference of two plain means is the difference judged.
        var warmth = Review.Pairs[0];
        Assert.Equal(warmth.Difference.Effect.Value, warmth.Now.Mean.Value - warmth.Before.Mean.Value, 1e-9);
        Assert.Null(MonthPairsChart.Of(ReviewOf(Demo.Journal), UnitSystem.Metric));
    }

    [Theory]
    [InlineData(UnitSystem.Metric, 1)]
    [InlineData(UnitSystem.Us, 1 / 28.349523125)]
    public void Cups_stand_beside_the_published_weight(UnitSystem units, double factor)
    {
        var figure = new Figure(CupsChart.Of(Class.Cups, units)!);
        Assert.Equal(Class.Cups.Select(cup => cup.MassG * factor), Figure.Numbers(figure.Trace("weighed cup")["y"]), (a, b) => Math.Abs(a - b) < 1e-9);

        // USDA Home Economics Research Report 41 (1977): 126 g.
        Assert.Equal(126 * factor, Figure.Numbers(figure.Trace("published")["y"])[0], 1e-9);
        var people = Class.Cups.GroupBy(cup => cup.Measurer).Select(person => person.Average(cup => cup.MassG)).ToList();
        Assert.Equal(people.Average() * factor, Figure.Numbers(figure.Trace("mean over people (95 %)")["y"])[0], 1e-9);
        Assert.Null(CupsChart.Of([], units));
    }

    [Fact]
    public void The_overview_holds_every_answer_once_in_the_order_asked()
    {
        var figure = new Figure(OverviewChart.Of(Review.Family, UnitSystem.Metric)!);
        var shown = figure.Traces.SelectMany(trace => Figure.Numbers(trace["x"])).ToList();
        Assert.Equal(Review.Family.Answers.Select(answer => answer.Effect.Value).Order(), shown.Order());
        Assert.Equal(Review.Family.Answers.Count, figure.Notes.Count);
        foreach (var trace in figure.Traces)
        {
            var strength = Enum.GetValues<Strength>().Single(one => FindingWords.Of(one) == (string)trace["name"]!);
            Assert.All(Figure.Numbers(trace["x"]), effect => Assert.Contains(Review.Family.Answers, answer => answer.Effect.Value == effect && answer.Strength == strength));
        }

        Assert.Null(OverviewChart.Of(FindingFamily.Judge([], []), UnitSystem.Metric));
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "metric")]
    [InlineData(UnitSystem.Us, "us")]
    public void Titles_and_notes_read_as_approved(UnitSystem units, string name)
    {
        var groups = GroupQuestion.Ask(Class.Bakes, Measures.RiseTime).Value;
        GenericChart[] charts =
        [
            RiseTimeChart.AgainstDoughTemperature(RiseTime.Ask(Class.Bakes).Value, units)!, LoafSurfaceChart.Of(LoafVolume.Ask(Class.Bakes).Value, units)!,
            GroupLinesChart.Along(groups, Measures.DoughTemperature, units)!, SwayChart.Of(SwayedAnswer.Of(Class.Bakes, "rise_time.dough_temperature").Value, units),
            MonthPairsChart.Of(Review, units)!, CupsChart.Of(Class.Cups, units)!, OverviewChart.Of(Review.Family, units)!,
        ];
        var text = charts.Select(chart => new Figure(chart)).Select(figure =>
            string.Join('\n', figure.Layout["annotations"] is null ? [figure.Title] : figure.Notes.Where(note => note.Length > 0).Prepend(figure.Title)));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/charts-{name}.txt", string.Join("\n\n", text) + "\n");
    }

    [Fact]
    public void Hostile_names_stay_text()
    {
        const string hostile = "<script>alert(1)</script>";
        var journal = Class with
        {
            Cups = [.. Class.Cups.Select(cup => cup with { Measurer = hostile })],
        };
        var bakes = Demo.Read(File.ReadLines(Repository.Path("data-demo/osier-yard/bakes.csv"))
            .Select(line => line.Replace("door bench", hostile, StringComparison.Ordinal).Replace("OY-14,", hostile + ",", StringComparison.Ordinal)));
        var review = ReviewOf(bakes);
        GenericChart[] charts =
        [
            GroupLinesChart.Along(GroupQuestion.Ask(bakes.Bakes, Measures.RiseTime).Value, Measures.DoughTemperature, UnitSystem.Metric)!,
            SwayChart.Of(SwayedAnswer.Of(bakes.Bakes, "rise_time.dough_temperature").Value, UnitSystem.Metric), CupsChart.Of(journal.Cups, UnitSystem.Metric)!,
            MonthPairsChart.Of(review, UnitSystem.Metric)!, OverviewChart.Of(review.Family, UnitSystem.Metric)!,
            LoafSurfaceChart.Of(LoafVolume.Ask(bakes.Bakes).Value, UnitSystem.Metric)!, RiseTimeChart.AgainstDoughTemperature(RiseTime.Ask(bakes.Bakes).Value, UnitSystem.Metric)!,
        ];
        Assert.Contains(charts, chart => GenericChart.toFigureJson(chart).Contains("lt;script", StringComparison.Ordinal));
        Assert.All(charts, chart => Assert.DoesNotContain("<script>alert", GenericChart.toFigureJson(chart), StringComparison.Ordinal));
    }

    [Fact]
    public void Charts_of_findings_are_the_same_in_every_culture()
    {
        static string All() => string.Concat(
            GenericChart.toFigureJson(LoafSurfaceChart.Of(LoafVolume.Ask(Class.Bakes).Value, UnitSystem.Us)!),
            GenericChart.toFigureJson(OverviewChart.Of(Review.Family, UnitSystem.Us)!), GenericChart.toFigureJson(MonthPairsChart.Of(Review, UnitSystem.Us)!),
            GenericChart.toFigureJson(CupsChart.Of(Class.Cups, UnitSystem.Us)!));
        Assert.Equal(Demo.Under("en-US", All), Demo.Under("de-DE", All));
    }

    private static MonthReview ReviewOf(Journal journal)
    {
        var causes = CauseAnswers.Of(journal.Bakes);
        return MonthReview.Of(journal, "", causes.Answers, causes.Open);
    }
}
