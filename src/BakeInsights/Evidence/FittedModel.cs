using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A least-squares fit of the terms that a journal can support.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Selection">The terms, and those that were left out.</param>
/// <param name="Fit">The fit; its columns are the intercept, then the terms in order, then those of the blocks.</param>
/// <param name="LeftOutBakes">The bakes that the fit does not rest on, by reason.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="Ranges">Over which values each setting was tried.</param>
internal sealed record FittedModel(
    Question Question,
    TermSelection Selection,
    ILinearFit Fit,
    IReadOnlyList<LeftOutBakes> LeftOutBakes,
    Basis Basis,
    IReadOnlyList<SettingRange> Ranges)
{
    public const string Intercept = "intercept";

    /// <summary>The groups of bakes that have a level of their own; none where the fit is from sums.</summary>
    public IReadOnlyList<Blocks> Blocks { get; init; } = [];

    /// <summary>The groupings that went with a cause or with another grouping, so that the journal can't tell the two apart.</summary>
    public IReadOnlyList<EntangledBlocks> EntangledBlocks { get; init; } = [];

    /// <summary>
    /// Fits the candidates that the bakes can support. Where terms moved together, so that the journal can't tell
    /// them apart, the less important one is left out.
    /// </summary>
    public static Attempt<FittedModel> Make(Question question, IReadOnlyList<Bake> all) =>
        Make(question, all, selection => LeastSquares
            .Fit(DesignOf(selection, []), [.. selection.Bakes.Select(question.ResponseOf)])
            .Select<ILinearFit>(fit => fit)).Select(model => model.WithBlocks());

    /// <summary>
    /// The same from running sums, which take neither the time nor the memory of a fit that knows its rows.
    /// </summary>
    public static Attempt<FittedModel> MakeFromSums(Question question, IReadOnlyList<Bake> all) =>
        Make(question, all, selection =>
        {
            var sums = new RunningSums([Intercept, .. selection.Terms.Select(term => term.Name)]);
            foreach (var bake in selection.Bakes)
            {
                sums.Add([1, .. selection.Terms.Select(term => term.ValueOf(bake)!.Value)], question.ResponseOf(bake));
            }

            return sums.Fit().Select<ILinearFit>(fit => fit);
        });

    private static Attempt<FittedModel> Make(
        Question question, IReadOnlyList<Bake> all, Func<TermSelection, Attempt<ILinearFit>> fitOf)
    {
        var aside = new List<LeftOutBakes>();
        var bakes = all;
        foreach (var exclusion in question.Exclusions)
        {
            bakes = exclusion.LeaveOut(bakes, aside);
        }

        if (bakes.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [question.Name],
                $"No bake has a {question.Name} that can be used.",
                $"Log the {question.Name} of each bake.");
        }

        var selection = TermSelection.Make(bakes, question.Candidates);
        while (selection.Terms.Count > 0)
        {
            if (fitOf(selection).TryGet(out var fit, out var problem))
            {
                IReadOnlyList<LeftOutBakes> leftOut = [.. aside, .. selection.LeftOutBakes];

                // A start for running sums counts all of this itself.
                return fit is LeastSquaresFit
                    ? new FittedModel(question, selection, fit, leftOut, Basis.Of(selection.Bakes, leftOut), SettingRange.Of(selection.Bakes))
                    : new FittedModel(question, selection, fit, leftOut, default, []);
            }

            if (problem.Kind == FitProblemKind.NoSpread)
            {
                return new FitProblem(
                    FitProblemKind.NoSpread,
                    [question.Name],
                    $"The {question.Name} is the same in all {selection.Bakes.Count} bakes, so there is nothing to explain.",
                    $"Log bakes that differ in their {question.Name}.");
            }

            if (problem.Kind != FitProblemKind.DependentColumn)
            {
                return problem with { Columns = [question.Name] };
            }

            selection = selection.Less(problem.Columns[0], Entangled(problem));
        }

        var have = bakes.Count == 1 ? "bake has" : "bakes have";
        return new FitProblem(
            FitProblemKind.TooFewRows,
            [question.Name],
            $"The journal can't support a single cause: {bakes.Count} {have} a {question.Name}. "
                + string.Join(" ", selection.LeftOutTerms.Select(term => $"{Words(term.Name)}: {term.Reason}")),
            "Log more bakes, and change the dough temperature by a few degrees from one to the next.");
    }

    /// <summary>The values of the columns, intercept first, for a dough that is described by its measures.</summary>
    public IReadOnlyList<double> Row(Func<Measure, double?> valueOf) =>
    [
        1,
        .. Selection.Terms.Select(term => term.ValueFrom(valueOf)
            ?? throw new ArgumentException($"The dough's {term.Causes[0].Measure.Name} is not given.", nameof(valueOf))),
        .. Blocks.SelectMany(block => block.Columns).Select(_ => 0.0),
    ];

    /// <summary>The fit's coefficient of a term, or null when the term was left out.</summary>
    public Term? Coefficient(string name) => Fit.Terms.FirstOrDefault(term => term.Name == name);

    /// <summary>The terms with their units.</summary>
    public IReadOnlyList<AnswerTerm> Terms =>
    [
        new AnswerTerm(Intercept, Question.Unit, Fit.Terms[0]),
        .. Selection.Terms.Zip(Fit.Terms.Skip(1), (term, coefficient) => new AnswerTerm(term.Name, term.Unit, coefficient)),
    ];

    // A grouping that the terms already tell stays out: each group kept its own temperature, say.
    private FittedModel WithBlocks()
    {
        List<Blocks> kept = [];
        List<EntangledBlocks> entangled = [];
        var fit = Fit;
        foreach (var block in BakeInsights.Blocks.Of(Selection.Bakes, Selection.Terms.Count + 1))
        {
            if (LeastSquares.Fit(DesignOf(Selection, [.. kept, block]), [.. Selection.Bakes.Select(Question.ResponseOf)])
                .TryGet(out var finer, out var problem))
            {
                fit = finer;
                kept.Add(block);
            }
            else if (problem.Kind == FitProblemKind.DependentColumn)
            {
                entangled.Add(BakeInsights.EntangledBlocks.Of(block, kept, Selection.Bakes));
            }
        }

        return this with { Fit = fit, Blocks = kept, EntangledBlocks = entangled };
    }

    private static Design DesignOf(TermSelection selection, IReadOnlyList<Blocks> blocks) =>
        DesignOf(selection.Bakes, selection.Terms, blocks);

    /// <summary>The columns of a model: the intercept, terms that all the bakes have, and blocks.</summary>
    internal static Design DesignOf(IReadOnlyList<Bake> bakes, IEnumerable<CandidateTerm> terms, IReadOnlyList<Blocks> blocks) => new(
    [
        new DesignColumn(Intercept, [.. Enumerable.Repeat(1.0, bakes.Count)]),
        .. terms.Select(term => term.ColumnOf(bakes)),
        .. blocks.SelectMany(block => block.Columns),
    ]);

    // The intercept is no cause: a term that depends on it alone, or is zero throughout, took one value in all bakes.
    private static string Entangled(FitProblem problem)
    {
        var others = problem.Columns.Skip(1).Where(name => name != Intercept).Select(Words).ToList();
        return others.Count == 0
            ? "It had the same value in every bake."
            : $"It moved together with {string.Join(" and ", others)}, so this journal can't tell them apart.";
    }

    private static string Words(string term) => term.Replace('_', ' ');
}
