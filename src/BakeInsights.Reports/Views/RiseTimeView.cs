using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>What moved the rise time, in words and tables.</summary>
public static class RiseTimeView
{
    private const string Title = "Rise time";

    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="bakes">How many bakes were asked about.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<RiseTimeAnswer> answer, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => Of(found, bakes, units),
            problem => new View([new ViewHeading(Title), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(RiseTimeAnswer answer, int bakes, UnitSystem units)
    {
        var figures = new Figures(units);
        return new View(
        [
            new ViewHeading(Title),
            new ViewParagraph(Headline(answer, figures)),
            Causes(answer, figures),
            .. Handbooks(answer, figures),
            AnswerBlocks.Basis(answer, bakes),
            AnswerBlocks.Reservations(answer),
            AnswerBlocks.Coefficients(answer),
        ]);
    }

    /// <summary>The main result in a sentence or two.</summary>
    internal static string Headline(RiseTimeAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Temperature);
        var oneDegree = 1 / unit.Factor;
        var typical = answer.At(answer.Typical);
        if (answer.ChangeInMinutes(oneDegree) is not { } minutes || answer.ChangePct(oneDegree) is not { } percent
            || answer.Q10 is not { } q10 || typical.X is not { } celsius)
        {
            return "The journal can't say what the dough's temperature does to the rise time.";
        }

        var sooner = minutes.Value < 0;
        var sign = sooner ? -1 : 1;
        return $"A dough 1 {unit.Label} warmer was ready about {Figures.Rounded(sign * minutes.Value, 0)} min "
            + $"{(sooner ? "sooner" : "later")} ({Ends(minutes, sign, 0)}), which is {Figures.Rounded(sign * percent.Value, 1)} % "
            + $"of its time ({Ends(percent, sign, 1)}), counted from the journal's typical dough: "
            + $"{figures.WithUnit(Dimension.Temperature, celsius)}, ready in {Figures.Rounded(typical.Estimate, 0)} min. "
            + $"Ten degrees Celsius warmer means {Figures.Rounded(q10.Value, 1)} times as fast "
            + $"(Q10, {Figures.Range(q10.Low, q10.High, 1)}). Ranges are 95 % intervals.";
    }

    private static string Ends(Estimate estimate, int sign, int decimals) => sign > 0
        ? Figures.Range(estimate.Low, estimate.High, decimals)
        : Figures.Range(-estimate.High, -estimate.Low, decimals);

    private static ViewTable Causes(RiseTimeAnswer answer, Figures figures)
    {
        return new ViewTable(
            "What each cause did, the others held still.",
            [new ViewColumn("One step", false), new ViewColumn("Rise time changes by", true), new ViewColumn("95 % interval", true)],
            [
                .. Steps(figures)
                    .Select(step => (Step: step.Words, Change: answer.ChangePct(step.Term, step.Change)))
                    .Where(row => row.Change is not null)
                    .Select(row => new[]
                    {
                        row.Step,
                        Figures.Rounded(row.Change!.Value, 1) + " %",
                        Figures.Range(row.Change.Low, row.Change.High, 1, "%"),
                    }),
            ]);
    }

    private static (string Term, string Words, double Change)[] Steps(Figures figures)
    {
        var temperature = figures.UnitOf(Dimension.Temperature);
        return
        [
            (RiseTime.DoughTemperatureTerm, $"dough 1 {temperature.Label} warmer", 1 / temperature.Factor),
            (RiseTime.HydrationTerm, "hydration 1 point higher", 1),
            (RiseTime.LogYeastTerm, "yeast a quarter more", Math.Log(1.25)),
            (RiseTime.SaltTerm, "salt 0.5 points higher", 0.5),
            (RiseTime.SugarTerm, "sugar 1 point higher", 1),
        ];
    }

    // Nothing else on the page rests on handbooks.
    private static IEnumerable<ViewBlock> Handbooks(RiseTimeAnswer answer, Figures figures)
    {
        if (!answer.WithHandbooks().TryGet(out var comparisons, out _))
        {
            yield break;
        }

        var rows = Steps(figures).Join(comparisons, step => step.Term, comparison => comparison.Term, (step, comparison) => (step, comparison)).ToList();
        yield return new ViewTable(
            "Your journal, the handbooks, and both together: by how much the rise time changes, 95 % intervals. All other figures are the journal's alone.",
            [
                new ViewColumn("One step", false), new ViewColumn("Your journal", true), new ViewColumn("Handbooks", true),
                new ViewColumn("Together", true),
            ],
            [
                .. rows.Select(row => new[]
                {
                    row.step.Words,
                    Change(row.comparison.Journal, row.step.Change),
                    Change(row.comparison.Handbook, row.step.Change),
                    Change(row.comparison.Together, row.step.Change),
                }),
            ]);
        var conflicts = rows.Where(row => row.comparison.IsConflict).Select(row => row.step.Words).ToList();
        if (conflicts.Count > 0)
        {
            yield return new ViewParagraph(
                $"Your journal and the handbooks disagree about {string.Join(", ", conflicts)} by more than chance gives once in twenty times: "
                + "trust your own kitchen, and look at its probe, scale and yeast before you do.");
        }
    }

    private static string Change(Estimate slope, double change) =>
        Figures.Range(Percent(slope.Low, change), Percent(slope.High, change), 1, "%");

    private static double? Percent(double? slope, double change) => slope is { } value ? 100 * (Math.Exp(value * change) - 1) : null;
}
