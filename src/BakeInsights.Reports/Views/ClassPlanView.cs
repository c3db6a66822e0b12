using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>A class's bakes on a page: who bakes what, bench by bench.</summary>
public static class ClassPlanView
{
    /// <summary>The plan as a class reads it, or why there is none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units to speak in; levels stay as they were written.</param>
    public static View Of(Attempt<ClassPlan> plan, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Match(
            found => Of(found, new Figures(units)),
            problem => new View([new ViewHeading("Plan for a class"), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(ClassPlan plan, Figures figures) => new(
    [
        new ViewHeading("Plan for a class"),
        new ViewParagraph(Headline(plan, figures)),
        Powers(plan),
        .. plan.Wish.Benches.SelectMany(bench => Bench(plan, bench)),
        new ViewList([.. Remarks(plan, figures)]),
    ]);

    private static string Headline(ClassPlan plan, Figures figures)
    {
        var names = plan.Wish.Factors.Select(factor => factor.Name).ToList();
        var perBench = plan.Bakes.Count / plan.Wish.Benches.Count;
        var spare = plan.SparePerBench > 0 ? $", and {plan.SparePerBench} spare for what is lost" : "";
        return $"Varied: {string.Join(", ", plan.Wish.Factors.Select(factor => $"{factor.Name} ({string.Join(", ", factor.Levels)})"))}. "
            + $"{Figures.Sentence(Many(plan.Wish.Benches.Count, "bench", "benches"))} with {JournalView.Count(perBench, "bake")} each{spare}: "
            + $"{JournalView.Count(plan.Bakes.Count, "bake")} in {Many(plan.Rounds, "round", "rounds")}. "
            + $"So many find a difference of {Difference(plan, plan.Wish.Difference, figures)} in the {plan.Wish.Result.Words} between two levels of {(names.Count == 1 ? names[0] : "one of them")} "
            + $"with a chance of {Figures.Rounded(100 * plan.Wish.Power, 0)} in 100 or better.";
    }

    private static ViewTable Powers(ClassPlan plan) => new(
        "What the plan can find, by the F test of each at a p value of 0.05.",
        [
            new ViewColumn("Varied", false),
            new ViewColumn("Bakes at each level", true),
            new ViewColumn("Chance (%)", true),
            new ViewColumn("Compared", false),
        ],
        [
            .. plan.Powers.Select(power => new[]
            {
                power.Factor,
                Figures.Rounded(power.BakesPerLevel, 0),
                power.DegreesOfFreedom < 1 ? "–" : Figures.Rounded(100 * power.Power, 0),
                power.IsBetweenRounds ? "from round to round" : "within each bench",
            }),
        ]);

    private static IEnumerable<ViewBlock> Bench(ClassPlan plan, string bench)
    {
        var spare = Enumerable.Range(1, plan.SparePerBench).Select(i => (IReadOnlyList<string>)
            ["spare", "", .. plan.Wish.Factors.Select((_, place) => place == 0 ? "again what was lost" : "")]);
        yield return new ViewTable(
            $"{Figures.Sentence(bench)}, in this order:",
            [
                new ViewColumn("Bake", true),
                new ViewColumn("Round", true),
                .. plan.Wish.Factors.Select(factor => new ViewColumn(factor.Name, false)),
            ],
            [
                .. plan.Bakes.Where(bake => bake.Bench == bench).Select(bake => (IReadOnlyList<string>)
                    [Figures.Rounded(bake.Order, 0), Figures.Rounded(bake.Round, 0), .. bake.Levels]),
                .. spare,
            ]);
    }

    private static IEnumerable<string> Remarks(ClassPlan plan, Figures figures)
    {
        var scatter = Difference(plan, plan.Scatter, figures);
        yield return plan.ScatterBakes is { } bakes
            ? $"Single bakes scatter by {scatter} (one standard deviation) in the journal's {JournalView.Count(bakes, "bake")}, the causes that it knows held still. A class that is new to it may scatter more."
            : $"Single bakes are taken to scatter by {scatter} (one standard deviation), as was said.";
        yield return "The order was drawn by lot. Keep to it: what changes in the course of the day is then no one's fault.";
        foreach (var sentence in plan.CannotTellApart)
        {
            yield return sentence;
        }
    }

    private static string Difference(ClassPlan plan, double difference, Figures figures)
    {
        if (plan.Wish.Result == Measures.RiseTime)
        {
            return $"{Figures.Significant(difference, 2)} %";
        }

        var unit = figures.UnitOf(plan.Wish.Result.Dimension);
        return $"{Figures.Rounded(unit.Difference(difference), unit.Decimals)} {unit.Label}";
    }

    private static string Many(int count, string one, string several) => count == 1 ? $"1 {one}" : $"{count} {several}";
}
