namespace BakeInsights;

/// <summary>The bakes that can speak to a column, and the terms that hold other causes still.</summary>
/// <param name="Question">What is asked of each bake.</param>
/// <param name="Column">The column asked about.</param>
/// <param name="Form">How.</param>
/// <param name="Blocks">The columns whose differences are set aside.</param>
/// <param name="Bakes">The bakes.</param>
/// <param name="HeldStill">The terms.</param>
/// <param name="LeftOutBakes">The bakes that can't speak, by reason.</param>
/// <param name="LeftOutTerms">The terms that the bakes can't support.</param>
internal sealed record ColumnRows(
    Question Question,
    ColumnCells Column,
    ColumnForm Form,
    IReadOnlyList<ColumnCells> Blocks,
    IReadOnlyList<Bake> Bakes,
    IReadOnlyList<CandidateTerm> HeldStill,
    IReadOnlyList<LeftOutBakes> LeftOutBakes,
    IReadOnlyList<LeftOutTerm> LeftOutTerms)
{
    /// <summary>The levels of the column among the bakes, or of a block.</summary>
    public ColumnLevels LevelsOf(ColumnCells cells) => ColumnLevels.Of(Bakes, cells);

    /// <summary>Leaves out what can't speak: no result, no cell, no block, a cause not logged, the only one of its kind.</summary>
    public static ColumnRows Select(
        IReadOnlyList<Bake> all, Question question, ColumnCells column, ColumnForm form, IReadOnlyList<ColumnCells> blocks,
        IReadOnlyList<CandidateTerm> candidates)
    {
        var aside = new List<LeftOutBakes>();
        var bakes = question.Exclusions.Aggregate(all, (left, exclusion) => exclusion.LeaveOut(left, aside));
        var unread = form == ColumnForm.Levels ? Empty(column) : new Exclusion($"no number in {column.Name}", bake => column.Number(bake) is null);
        bakes = blocks.Select(Empty).Prepend(unread).Aggregate(bakes, (left, exclusion) => exclusion.LeaveOut(left, aside));
        var selection = TermSelection.Make(bakes, candidates);
        aside.AddRange(selection.LeftOutBakes);
        bakes = selection.Bakes;
        ColumnCells[] divisions = form == ColumnForm.Levels ? [column, .. blocks] : [.. blocks];
        for (var before = -1; before != bakes.Count;)
        {
            before = bakes.Count;
            bakes = divisions.Aggregate(bakes, (left, cells) => WithoutLone(left, cells, aside));
        }

        return new ColumnRows(question, column, form, blocks, bakes, selection.Terms, aside, selection.LeftOutTerms);
    }

    /// <summary>The same less one term.</summary>
    public ColumnRows Less(CandidateTerm term, string reason) => this with
    {
        HeldStill = [.. HeldStill.Where(other => other != term)],
        LeftOutTerms = [.. LeftOutTerms, new LeftOutTerm(term.Name, reason)],
    };

    /// <summary>The same without some of the bakes, which are no longer counted anywhere.</summary>
    public ColumnRows Less(IReadOnlyCollection<Bake> odd) => this with { Bakes = [.. Bakes.Except(odd)] };

    private static Exclusion Empty(ColumnCells cells) => new($"nothing in {cells.Name}", bake => cells.Text(bake) is null);

    // A level with one bake says nothing of its scatter, and a block with one bake compares it with none.
    private static IReadOnlyList<Bake> WithoutLone(IReadOnlyList<Bake> bakes, ColumnCells cells, List<LeftOutBakes> aside)
    {
        var levels = ColumnLevels.Of(bakes, cells);
        var lone = levels.Names.Where((_, level) => levels.Count(level) == 1).ToHashSet();
        return new Exclusion($"a {cells.Name} that no other bake has", bake => lone.Contains(levels.NameOf(bake))).LeaveOut(bakes, aside);
    }
}
