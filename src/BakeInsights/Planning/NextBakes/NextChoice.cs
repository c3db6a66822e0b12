using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Chooses the doughs whose results would narrow a question most.</summary>
/// <param name="Model">The model they are chosen for.</param>
/// <param name="Doughs">The doughs, in no order that means anything.</param>
/// <param name="StillTogether">Pairs of settings that moved together, and would still with these bakes.</param>
internal sealed record NextChoice(NextModel Model, IReadOnlyList<DoughSettings> Doughs, IReadOnlyList<(Measure One, Measure Other)> StillTogether)
{
    // A curve is looked at along fine steps, a straight line needs little more than its ends.
    private const int MostOfCurve = 21;
    private const int MostOfLine = 5;
    private const int Starts = 8;

    /// <summary>Chooses.</summary>
    public static Attempt<NextChoice> Of(
        NarrowedQuestion question, IReadOnlyList<Bake> bakes, int count, DoughSettings usual, IReadOnlyList<KitchenSteps> steps, int seed)
    {
        HashSet<string> without = [];
        while (true)
        {
            if (!NextModel.Of(question, bakes, count, without).TryGet(out var model, out var problem))
            {
                return problem;
            }

            var candidates = Candidates(model, usual, steps);
            var attempt = Search(model, candidates, count, steps, DesignCriterion.AveragePrediction, seed);
            if (attempt.TryGet(out var doughs, out problem))
            {
                var together = Together(model, doughs);
                return together.Count == 0 ? new NextChoice(model, doughs, [])
                    : Search(model, candidates, count, steps, DesignCriterion.Determinant, seed)
                        .Select(apart => new NextChoice(model, apart, Together(model, apart)));
            }

            // What neither the journal nor the allowed settings vary is left out, unless the question is about it.
            if (problem.Kind != FitProblemKind.DependentColumn || question.OwnTerms.Contains(problem.Columns[0]) || !without.Add(problem.Columns[0]))
            {
                return problem;
            }
        }
    }

    private static IReadOnlyList<DoughSettings> Candidates(NextModel model, DoughSettings usual, IReadOnlyList<KitchenSteps> steps)
    {
        IReadOnlyList<DoughSettings> doughs = [usual];
        foreach (var step in steps)
        {
            var terms = model.Terms.Where(term => term.Causes.Any(cause => cause.Measure == step.Measure)).ToList();
            var most = terms.Count == 0 ? 0 : terms.Exists(term => term.LevelsNeeded > 2) ? MostOfCurve : MostOfLine;
            IReadOnlyList<double> values = most == 0 ? [UsualOf(step, usual)] : step.Values(most);
            doughs = [.. doughs.SelectMany(dough => values.Select(value => dough.With(step.Measure, value)))];
        }

        return doughs;
    }

    private static double UsualOf(KitchenSteps step, DoughSettings usual) =>
        step.Nearest(Math.Clamp(usual[step.Measure] ?? step.Limits.Low, step.Limits.Low, step.Limits.High));

    // The new bakes get a level of their own while they are chosen, so that each setting changes among themselves: were all
    // of them wetter than the old ones, a new bag of flour would pass for the water. The level is taken to be about as large
    // as the scatter of single bakes (our own choice), which is a row that has seen it as 0. One bake can't have one, and
    // bakes after hardly any may not.
    private static Attempt<IReadOnlyList<DoughSettings>> Search(
        NextModel model, IReadOnlyList<DoughSettings> candidates, int count, IReadOnlyList<KitchenSteps> steps, DesignCriterion criterion, int seed)
    {
        var apart = Search(model, candidates, count, steps, criterion, seed, count > 1 && model.Bakes.Count > 0);
        return apart.Succeeded ? apart : Search(model, candidates, count, steps, criterion, seed, false);
    }

    private static Attempt<IReadOnlyList<DoughSettings>> Search(
        NextModel model, IReadOnlyList<DoughSettings> candidates, int count, IReadOnlyList<KitchenSteps> steps, DesignCriterion criterion, int seed,
        bool isApart)
    {
        var hydration = steps.Single(step => step.Measure == Measures.Hydration).Limits;
        Design With(Design design, double level) => isApart
            ? new Design(design.Columns.Append(new DesignColumn("new bakes", [.. Enumerable.Repeat(level, design.RowCount)])))
            : design;
        Design Earlier() => !isApart ? model.Earlier : new Design(With(model.Earlier, 0).Columns.Select((column, place) =>
            new DesignColumn(column.Name, [.. column.Values, place == model.Earlier.Columns.Count ? 1 : 0])));
        return OptimalDesign.Find(
                With(model.DesignOf([.. candidates.Select(model.Row)]), 1), count, criterion, seed,
                model.Bakes.Count == 0 ? null : Earlier(), Starts,
                criterion == DesignCriterion.AveragePrediction ? With(model.DesignOf(model.Aims(hydration)), 0) : null)
            .Match<Attempt<IReadOnlyList<DoughSettings>>>(design => design.Candidates.Select(place => candidates[place]).ToArray(), problem => problem);
    }

    // Over all bakes that will then count, earlier ones and these.
    private static IReadOnlyList<(Measure One, Measure Other)> Together(NextModel model, IReadOnlyList<DoughSettings> doughs)
    {
        Measure[] varied =
        [
            .. model.Terms.Where(term => term.Causes.Count == 1).Select(term => term.Causes[0].Measure).Distinct()
                .Where(KitchenSteps.Settings.Contains),
        ];
        double[] Values(Measure measure) => [.. model.Bakes.Select(measure.Of).Known(), .. doughs.Select(dough => dough[measure]).Known()];
        return
        [
            .. from one in Enumerable.Range(0, varied.Length)
               from other in Enumerable.Range(one + 1, varied.Length - one - 1)
               where MovedTogether.Correlation(Values(varied[one]), Values(varied[other])) is { } correlation
                   && correlation * correlation >= MovedTogether.AlarmingSquare
               select (varied[one], varied[other]),
        ];
    }
}
