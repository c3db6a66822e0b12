using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>What to bake next, in words and a table.</summary>
public static class NextBakesView
{
    private const string Title = "What to bake next";

    /// <summary>The plan as a baker reads it, or why there is none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bakes">How many bakes the journal has.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<NextBakes> plan, int bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Match(
            found => Of(found, bakes, new Figures(units)),
            problem => new View([new ViewHeading(Title), new ViewParagraph($"{problem.Message} {problem.Remedy}")]));
    }

    private static View Of(NextBakes plan, int bakes, Figures figures) => new(
    [
        new ViewHeading(Title),
        new ViewParagraph(Asked(plan)),
        new ViewParagraph(Narrowing(plan, figures)),
        Table(plan, figures),
        new ViewList([.. Remarks(plan, bakes, figures)]),
    ]);

    private static string Asked(NextBakes plan) =>
        plan.Question.Words + (plan.QuestionWasChosen ? " Of the questions asked, the journal leaves this one most open." : "");

    private static string Narrowing(NextBakes plan, Figures figures)
    {
        if (plan.Narrowing is not { } narrowing)
        {
            return plan.WhyNoForecast;
        }

        var unit = plan.Question.IsOptimum ? "points" : "%";
        var now = plan.Question.IsOptimum
            ? narrowing.Now.IsOpen
                ? $"So far the best may lie anywhere from {Ends(narrowing.Now)} %"
                : $"So far the best lies from {Ends(narrowing.Now)} %"
            : $"So far: {FindingWords.Compared(plan.Question.Contrast, figures).ToLowerInvariant()} changes the time by {Ends(narrowing.Now)} %";
        var count = JournalView.Count(plan.Bakes.Count, "bake");
        var after = $" (±{Half(narrowing.Now.Half)} {unit}). After {(plan.Bakes.Count == 1 ? "this bake" : $"these {count}")} expect ±{Half(narrowing.After)} {unit}: of "
            + $"made-up outcomes half are that narrow, and nine in ten ±{Half(narrowing.AfterAtWorst)} or narrower.";
        var open = narrowing.StillOpenShare >= 0.005
            ? $" {Figures.Rounded(100 * narrowing.StillOpenShare, 0)} in 100 leave the best open."
            : "";
        return now + after + open + Until(plan, unit);
    }

    private static string Until(NextBakes plan, string unit) => plan.Until is not { } until ? ""
        : plan.BakesUntil is 0 ? $" ±{Figures.Significant(until, 2)} {unit} is reached already."
        : plan.BakesUntil is { } needed
            ? $" For ±{Figures.Significant(until, 2)} {unit} about {JournalView.Count(needed, "bake")} like these {(needed == 1 ? "is" : "are")} needed."
            : $" For ±{Figures.Significant(until, 2)} {unit} more than {NextBakes.MostBakesCounted} bakes like these are needed.";

    private static ViewTable Table(NextBakes plan, Figures figures)
    {
        var isWaterKnown = plan.WhyNoWater.Length == 0;
        return new ViewTable(
            "In this order, which was drawn by lot:",
            [
                new ViewColumn("Bake", true),
                new ViewColumn(figures.TitleOf("Dough", Dimension.Temperature), true),
                new ViewColumn("Hydration (%)", true),
                new ViewColumn("Yeast as instant (%)", true),
                .. isWaterKnown ? new[] { new ViewColumn(figures.TitleOf("Water", Dimension.Temperature), true) } : [],
            ],
            [
                .. plan.Bakes.Select(bake => (IReadOnlyList<string>)
                [
                    Figures.Rounded(bake.Order, 0),
                    figures.Bare(Dimension.Temperature, bake.DoughTemperatureC),
                    Figures.Rounded(bake.HydrationPct, 0),
                    Figures.Rounded(bake.YeastPct, 1),
                    .. isWaterKnown ? new[] { figures.Bare(Dimension.Temperature, bake.WaterC) } : [],
                ]),
            ]);
    }

    private static IEnumerable<string> Remarks(NextBakes plan, int bakes, Figures figures)
    {
        yield return "Leave all else as you usually do it, and log each bake as it came out, its dough temperature as read.";
        yield return $"Chosen within {Ends(plan.DoughTemperatureC, Dimension.Temperature, figures)} of dough temperature, "
            + $"{Ends(plan.HydrationPct, Dimension.Percent, figures)} hydration and {Ends(plan.YeastPct, Dimension.Percent, figures)} yeast, "
            + $"beside the {plan.Earlier} of {JournalView.Count(bakes, "bake")} that can speak to the question.";
        if (plan.WhyNoWater.Length > 0)
        {
            yield return plan.WhyNoWater;
        }
        else
        {
            yield return "Water is for the journal's middle flour and room temperature and its usual mixing, whatever your taps give: colder than the tap takes ice.";
        }

        foreach (var pair in plan.StillTogether)
        {
            yield return $"Even with these bakes {pair} move together, so the journal will hardly tell them apart; a wider range of one would.";
        }

        if (plan.Narrowing is not null)
        {
            yield return "Outcomes are made up from what the journal says so far, its own doubts counted in. What comes of the bakes may say otherwise.";
        }
    }

    private static string Ends(AnswerInterval interval) => Figures.Range(interval.Low, interval.High, 1);

    private static string Ends(SettingLimits limits, Dimension dimension, Figures figures)
    {
        var unit = figures.UnitOf(dimension);
        return Figures.Range(unit.Value(limits.Low), unit.Value(limits.High), unit.Decimals, unit.Label);
    }

    private static string Half(double half) => Figures.Rounded(half, 1);
}
