using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// Least squares of the bakes' ratings on their causes, with a level for each set of judges: among bakes with the same
/// judges a stricter judge shifts all alike, so that severity can't pass for the work of a cause.
/// </summary>
internal static class ScoreModel
{
    // Our own choice: a set of judges takes one level, and two bakes or more should be left to learn from.
    private const int LeastBakesOfPanel = 3;

    // As many as the selection of terms leaves.
    private const int LeastBakesToSpare = 3;

    public static CandidateTerm[] Candidates { get; } = [.. ScoreCause.All.Select(cause => CandidateTerm.Line(
        cause.Name, $"points per {cause.Step.Cause.Measure.Name}", cause.Step.Cause))];

    /// <summary>The model of these bakes, or the problem that stands in its way.</summary>
    public static Attempt<FittedModel> Make(ScoreTable table, IReadOnlyList<Bake> bakes)
    {
        string[] panels =
        [
            .. bakes.Select(table.RowOf).OfType<ScoredBake>()
                .CountBy(row => row.Panel)
                .Where(count => count.Value >= LeastBakesOfPanel)
                .OrderByDescending(count => count.Value)
                .ThenBy(count => count.Key, StringComparer.Ordinal)
                .Select(count => count.Key),
        ];
        if (panels.Length == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewGroups,
                [table.Name],
                $"No {LeastBakesOfPanel} bakes have a {table.Noun} score by the same judges, so a strict judge can't be told from a poor bake.",
                $"Let the same judges score the {table.Noun} of every bake.");
        }

        // Where the levels cost too many bakes, or went with the causes, the most frequent judges stand alone.
        var all = Make(table, bakes, panels);
        return all.Succeeded || panels.Length == 1 ? all : Make(table, bakes, panels[..1]);
    }

    private static Attempt<FittedModel> Make(ScoreTable table, IReadOnlyList<Bake> bakes, string[] panels)
    {
        var question = new Question(
            table.Measure,
            $"{table.Noun} score",
            table.Measure.Of,
            ResultScale.Plain,
            "points",
            [
                new Exclusion($"no {table.Noun} score", bake => table.RowOf(bake) is null),
                new Exclusion("judges of its own", bake => !panels.Contains(table.RowOf(bake)!.Panel)),
            ],
            Candidates);
        if (!FittedModel.Make(question, bakes).TryGet(out var model, out var problem))
        {
            return problem;
        }

        if (PanelsOf(table, model.Selection.Bakes) is not { } levels)
        {
            return model;
        }

        var fit = (LeastSquaresFit)model.Fit;
        if (!LeastSquares.Fit(new Design([.. fit.Design.Columns, .. levels.Columns]), fit.Response).TryGet(out var finer, out problem))
        {
            return problem;
        }

        return finer.ResidualDegreesOfFreedom >= LeastBakesToSpare
            ? model with { Fit = finer, Blocks = [.. model.Blocks, levels] }
            : new FitProblem(
                FitProblemKind.TooFewRows,
                [table.Name],
                $"There are too few bakes for {levels.Columns.Count + 1} sets of judges.",
                $"Let the same judges score the {table.Noun} of every bake.");
    }

    private static Blocks? PanelsOf(ScoreTable table, IReadOnlyList<Bake> bakes)
    {
        string[] own = [.. bakes.Select(bake => table.RowOf(bake)!.Panel)];
        string[] panels = [.. own.Distinct().Order(StringComparer.Ordinal)];
        return panels.Length < 2 ? null : new Blocks(
            ScoreColumns.Judge,
            "set of judges",
            [
                .. panels.SkipLast(1).Select((panel, place) => new DesignColumn(
                    $"set of judges {place + 1}",
                    [.. own.Select(mine => mine == panel ? 1.0 : mine == panels[^1] ? -1.0 : 0.0)])),
            ]);
    }
}
