using BakeInsights.Inference;

namespace BakeInsights.Reports;

/// <summary>A tuned formula in words and tables.</summary>
public static class TuneView
{
    private const string Title = "Tuned formula";

    // Water is split between taps for a dough of this much flour, in grams, where none is said.
    private const double FlourG = 1_000;

    /// <summary>The answer as a baker reads it, or why there is none.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(Attempt<TuneAnswer> answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Match(
            found => found.OutOfReach.Count > 0 ? Of(OutOfReach(found, units)) : Of(found, units),
            problem => Of($"{problem.Message} {problem.Remedy}"));
    }

    /// <summary>What the journal supports in place of wishes that can't be met; a line.</summary>
    /// <exception cref="ArgumentException">They can be met.</exception>
    public static string OutOfReach(TuneAnswer answer, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.OutOfReach.Count == 0)
        {
            throw new ArgumentException("The wishes can be met.", nameof(answer));
        }

        var figures = new Figures(units);
        var alone = answer.OutOfReach.Count == 1 || answer.OutOfReach.Count < answer.Wish.Goals.Count;
        var wishes = string.Join(" and ", answer.OutOfReach.Select(one => TuneWords.Wish(one.Goal, figures)));
        var can = alone || answer.Costs.Any(cost => cost.BestAlone < Tuning.LeastChance) ? "can't be met" : "can't be met together";
        return $"{Figures.Sentence(wishes)} {can}: {string.Join("; ", answer.OutOfReach.Select(one => Possible(one, answer, figures)))}. Wish for less, or bake other doughs first.";
    }

    private static string Possible(GoalReach reach, TuneAnswer answer, Figures figures)
    {
        var unit = figures.UnitOf(reach.Goal.Result.Dimension);
        var most = reach.Goal.Result == Measures.RiseTime ? "the soonest that the journal supports"
            : reach.Goal.High is null || reach.Result.Estimate < reach.Goal.Low ? "the most that the journal supports"
            : "the least that the journal supports";
        return $"{most} is {figures.WithUnit(reach.Goal.Result.Dimension, reach.Result.Estimate)} "
            + $"({Figures.Range(unit.Value(reach.Result.Prediction.Low), unit.Value(reach.Result.Prediction.High), unit.Decimals)} for one more bake, 95 %) with "
            + TuneWords.Dough(reach.Settings, answer.Settings, figures);
    }

    private static View Of(string problem) => new([new ViewHeading(Title), new ViewParagraph(problem)]);

    private static View Of(TuneAnswer answer, UnitSystem units)
    {
        var figures = new Figures(units);
        return new View(
        [
            new ViewHeading(Title),
            new ViewParagraph(Headline(answer, figures)),
            Formulas(answer, figures),
            Wishes(answer, figures),
            Steps(answer, figures),
            new ViewParagraph(Safe(answer, figures)),
            .. Water(answer, units),
            new ViewList([.. TuneRemarks.Of(answer, figures)]),
        ]);
    }

    private static string Headline(TuneAnswer answer, Figures figures)
    {
        var wishes = string.Join(" and ", answer.Wish.Goals.Select(goal => TuneWords.Wish(goal, figures)));
        var (house, best) = (TuneWords.WithRange(answer.House.Chance), TuneWords.WithRange(answer.Best.Chance));
        return answer.IsChange
            ? $"Wished: {wishes}. With {TuneWords.Dough(answer.Best.Settings, answer.Settings, figures)} the next bake has it with a chance of {best}; "
                + $"the house formula's is {house}."
            : $"Wished: {wishes}. Keep the house formula, whose chance is {house}. The best that the journal shows has {best}, "
                + $"and is better with a probability of {TuneWords.Chance(answer.ChanceOfBetter)}: that doesn't bear out a change.";
    }

    private static ViewTable Formulas(TuneAnswer answer, Figures figures) => new(
        answer.IsChange ? "What to change." : "The house formula, and the best that the journal shows.",
        [new ViewColumn("Setting", false), new ViewColumn("House formula", true), new ViewColumn(answer.IsChange ? "Tuned" : "Best", true)],
        [
            .. answer.Settings.Select(setting => new[]
            {
                setting.Title,
                TuneWords.Setting(setting, answer.House.Settings[setting]!.Value, figures),
                TuneWords.Setting(setting, answer.Best.Settings[setting]!.Value, figures),
            }),
            ["Chance of all wishes", TuneWords.Chance(answer.House.Chance.Value), TuneWords.Chance(answer.Best.Chance.Value)],
        ]);

    private static ViewTable Wishes(TuneAnswer answer, Figures figures) => new(
        $"What each wish costs: its own chance, the best it would have alone, the best of the others without it, and the bound that would give "
            + $"{TuneWords.Chance(Tuning.SafeChance)} for all with the formula advised.",
        [
            new ViewColumn("Wish", false), new ViewColumn("House formula", true), new ViewColumn("Advised", true), new ViewColumn("Alone", true),
            new ViewColumn("Others without", true), new ViewColumn($"{TuneWords.Chance(Tuning.SafeChance)} at", true),
        ],
        [
            .. answer.Costs.Index().Select(cost => new[]
            {
                Figures.Sentence(TuneWords.Wish(cost.Item.Goal, figures)),
                TuneWords.Chance(answer.House.Goals[cost.Index]),
                TuneWords.Chance(answer.Advised.Goals[cost.Index]),
                TuneWords.Chance(cost.Item.BestAlone),
                cost.Item.ChanceWithout is { } without ? TuneWords.Chance(without) : "–",
                cost.Item.SafeBound is { } bound ? TuneWords.Bound(cost.Item.Goal, bound, figures) : "–",
            }),
        ]);

    private static ViewTable Steps(TuneAnswer answer, Figures figures) => new(
        "One step away from the formula advised. In brackets: no such dough was baked, so it is a guess.",
        [
            new ViewColumn("Step", false), new ViewColumn("All wishes", true),
            .. answer.Wish.Goals.Select(goal => new ViewColumn(Figures.Sentence(TuneWords.Wish(goal, figures)), true)),
        ],
        [
            .. answer.Steps.Select(step => new[]
            {
                $"{step.Setting.Words} {(step.Change < 0 ? "−" : "+")}{Amount(step, figures)}",
                Guessed(step.Formula.Chance.Value, step),
            }.Concat(step.Formula.Goals.Select(chance => Guessed(chance, step))).ToArray()),
        ]);

    private static string Guessed(double chance, TuneStep step) => step.Formula.IsBaked ? TuneWords.Chance(chance) : $"({TuneWords.Chance(chance)})";

    private static string Amount(TuneStep step, Figures figures)
    {
        var unit = figures.UnitOf(step.Setting.Dimension);
        return $"{Figures.Rounded(unit.Difference(Math.Abs(step.Change)), 1)} {(step.Setting.Dimension == Dimension.Percent ? "points" : unit.Label)}";
    }

    private static string Safe(TuneAnswer answer, Figures figures) => answer.Safe is { } safe
        ? $"To be safe ({TuneWords.Chance(Tuning.SafeChance)} or more), the least change is {TuneWords.Dough(safe.Settings, answer.Settings, figures)}: {TuneWords.WithRange(safe.Chance)}."
        : $"No dough among those baked has a chance of {TuneWords.Chance(Tuning.SafeChance)}; the last column above says what to give up for it.";

    private static IEnumerable<ViewBlock> Water(TuneAnswer answer, UnitSystem units) =>
        answer.WaterFor(FlourG * (answer.Advised.Settings[Measures.Hydration] ?? ModelAnswer.CentreHydrationPct) / 100) is { } water
            ? KitchenDoughTemperatureView.Of(water, units).Blocks
            : [];
}
