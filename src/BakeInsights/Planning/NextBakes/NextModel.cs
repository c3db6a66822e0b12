using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The model that the next bakes are planned for: that of the question, as far as bakes old and new bear it.</summary>
/// <param name="Question">The question.</param>
/// <param name="Bakes">The earlier bakes that count.</param>
/// <param name="Terms">The terms.</param>
/// <param name="Blocks">The groups with a level of their own.</param>
/// <param name="Fit">The fit of the earlier bakes with just these terms; null where they can't bear it yet.</param>
internal sealed record NextModel(
    NarrowedQuestion Question, IReadOnlyList<Bake> Bakes, IReadOnlyList<CandidateTerm> Terms, IReadOnlyList<Blocks> Blocks, LeastSquaresFit? Fit)
{
    /// <summary>The model that the earlier bakes, and so many more, can bear.</summary>
    public static Attempt<NextModel> Of(NarrowedQuestion question, IReadOnlyList<Bake> bakes, int more, IReadOnlyCollection<string> without)
    {
        var asked = question.Model;
        var able = asked.Exclusions.Aggregate(bakes, (left, exclusion) => exclusion.LeaveOut(left, []));
        var fitted = FittedModel.Make(asked with { Candidates = [.. asked.Candidates.Where(term => !without.Contains(term.Name))] }, bakes)
            .Match<FittedModel?>(model => model, _ => null);
        List<CandidateTerm> terms =
        [
            .. asked.Candidates.Where(term => !without.Contains(term.Name)
                && (term.Causes.All(cause => KitchenSteps.Settings.Contains(cause.Measure)) || fitted?.Coefficient(term.Name) is not null)),
        ];
        while (true)
        {
            IReadOnlyList<Bake> usable = [.. able.Where(bake => terms.All(term => term.ValueOf(bake) is not null))];
            var needed = TermSelection.BakesNeeded(terms.Count);
            if (usable.Count + more >= needed)
            {
                return fitted is { Fit: LeastSquaresFit fit } && fitted.Selection.Terms.Select(term => term.Name).SequenceEqual(terms.Select(term => term.Name))
                    ? new NextModel(question, fitted.Selection.Bakes, terms, fitted.Blocks, fit)
                    : new NextModel(question, usable, terms, [], null);
            }

            if (terms.FindLastIndex(term => !question.OwnTerms.Contains(term.Name)) is var last and >= 0)
            {
                terms.RemoveAt(last);
                continue;
            }

            return new FitProblem(
                FitProblemKind.TooFewRows,
                [asked.Name],
                $"To ask this takes {needed} bakes, and with {more} more there are {usable.Count + more}.",
                $"Plan {needed - usable.Count} or more bakes.");
        }
    }

    /// <summary>The names of the columns.</summary>
    public IReadOnlyList<string> Names => Earlier.Names;

    /// <summary>The earlier bakes.</summary>
    public Design Earlier => FittedModel.DesignOf(Bakes, Terms, Blocks);

    /// <summary>The row of a dough: that of the mean over the groups.</summary>
    public double[] Row(DoughSettings dough) =>
    [
        1,
        .. Terms.Select(term => term.ValueFrom(measure => dough[measure])!.Value),
        .. Blocks.SelectMany(block => block.Columns).Select(_ => 0.0),
    ];

    /// <summary>
    /// What is to be known well. For a best hydration: the slope of the volume over hydration wherever the best may still
    /// lie, for the interval (Fieller's) ends where that slope can be told from zero. For a step: its coefficient.
    /// </summary>
    public IReadOnlyList<double[]> Aims(SettingLimits hydration)
    {
        const int places = 9;
        if (!Question.IsOptimum)
        {
            return [[.. Names.Select(name => name == Question.OwnTerms[0] ? 1.0 : 0)]];
        }

        var open = Fit is null ? new AnswerInterval(hydration.Low, hydration.High, true) : AnswerInterval.Of(Question, Fit, hydration);
        return
        [
            .. Enumerable.Range(0, places).Select(i => open.Low + (i * (open.High - open.Low) / (places - 1))).Select(percent => Names
                .Select(name => name == LoafVolume.HydrationTerm ? 1.0
                    : name == LoafVolume.HydrationSquaredTerm ? 2 * (percent - Cause.CentreHydrationPct) : 0).ToArray()),
        ];
    }

    /// <summary>Rows as a design with this model's columns.</summary>
    public Design DesignOf(IReadOnlyList<double[]> rows) =>
        new(Names.Select((name, column) => new DesignColumn(name, [.. rows.Select(row => row[column])])));
}
