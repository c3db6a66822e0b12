using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A least-squares fit of the terms that a journal can support.</summary>
/// <param name="Selection">The terms and bakes, and what was left out.</param>
/// <param name="Fit">The fit; its columns are the intercept and then the terms in order.</param>
internal sealed record FittedModel(TermSelection Selection, LeastSquaresFit Fit)
{
    public const string Intercept = "intercept";

    /// <summary>
    /// Fits the candidates that the bakes can support. Where terms moved together, so that the journal can't tell
    /// them apart, the less important one is left out.
    /// </summary>
    public static Attempt<FittedModel> Make(
        IReadOnlyList<Bake> bakes, IReadOnlyList<CandidateTerm> candidates, string responseName, Func<Bake, double> response)
    {
        if (bakes.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [responseName],
                $"No bake has a {responseName} that can be used.",
                $"Log the {responseName} of each bake.");
        }

        var selection = TermSelection.Make(bakes, candidates);
        while (selection.Terms.Count > 0)
        {
            var values = selection.Bakes.Select(response).ToArray();
            if (LeastSquares.Fit(DesignOf(selection), values).TryGet(out var fit, out var problem))
            {
                return new FittedModel(selection, fit);
            }

            if (problem.Kind == FitProblemKind.NoSpread)
            {
                return new FitProblem(
                    FitProblemKind.NoSpread,
                    [responseName],
                    $"The {responseName} is the same in all {values.Length} bakes, so there is nothing to explain.",
                    $"Log bakes that differ in their {responseName}.");
            }

            if (problem.Kind != FitProblemKind.DependentColumn)
            {
                return problem with { Columns = [responseName] };
            }

            selection = selection.Less(problem.Columns[0], Entangled(problem));
        }

        var have = bakes.Count == 1 ? "bake has" : "bakes have";
        return new FitProblem(
            FitProblemKind.TooFewRows,
            [responseName],
            $"The journal can't support a single cause: {bakes.Count} {have} a {responseName}. "
                + string.Join(" ", selection.LeftOutTerms.Select(term => $"{Words(term.Name)}: {term.Reason}")),
            "Log more bakes, and change the dough temperature by a few degrees from one to the next.");
    }

    /// <summary>The values of the columns, intercept first, for a dough that is described by its measures.</summary>
    public IReadOnlyList<double> Row(Func<Measure, double?> valueOf) =>
    [
        1,
        .. Selection.Terms.Select(term => term.ValueFrom(valueOf)
            ?? throw new ArgumentException($"The dough's {term.Causes[0].Measure.Name} is not given.", nameof(valueOf))),
    ];

    /// <summary>The fit's coefficient of a term, or null when the term was left out.</summary>
    public Term? Coefficient(string name) => Fit.Terms.FirstOrDefault(term => term.Name == name);

    /// <summary>The terms with their units.</summary>
    public IReadOnlyList<AnswerTerm> TermsIn(string responseUnit) =>
    [
        new AnswerTerm(Intercept, responseUnit, Fit.Terms[0]),
        .. Selection.Terms.Zip(Fit.Terms.Skip(1), (term, coefficient) => new AnswerTerm(term.Name, term.Unit, coefficient)),
    ];

    private static Design DesignOf(TermSelection selection)
    {
        var ones = Enumerable.Repeat(1.0, selection.Bakes.Count).ToArray();
        var columns = selection.Terms.Select(term => new DesignColumn(
            term.Name, [.. selection.Bakes.Select(bake => term.ValueFrom(measure => measure.Of(bake))!.Value)]));
        return new Design([new DesignColumn(Intercept, ones), .. columns]);
    }

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
