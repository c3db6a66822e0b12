namespace BakeInsights;

/// <summary>
/// Asks what goes with the journal's own columns: those that make a question, and few of them, because each question more
/// costs every other its clearness. All limits are our own choice; docs/month.md has them.
/// </summary>
internal static class MonthColumns
{
    private const int MostColumns = 3;
    private const int MostWords = 5;
    private const int LeastBakesOfWord = 3;

    private static readonly IReadOnlyList<Measure> Results = [Measures.RiseTime, Measures.SpecificVolume];

    /// <summary>Asks it.</summary>
    public static void Ask(Asked asked, IReadOnlyList<Bake> bakes)
    {
        foreach (var (column, form) in Chosen(bakes))
        {
            foreach (var result in Results)
            {
                // Benches or flours that differ anyway are set aside, as in the models of the causes.
                string[] blocks = [.. Blocks.Of(bakes, ResultQuestion.Of(result).Candidates.Count + 1).Take(1).Select(block => block.Column.Name)];
                if (ColumnQuestion.Ask(bakes, result, column, form, blocks).TryGet(out var answer, out var problem))
                {
                    asked.Add(answer.Finding with { Name = NameOf(result, column) });
                }
                else
                {
                    asked.Add(ColumnQuestion.Open(result, column, problem) with { Name = NameOf(result, column) });
                }
            }
        }
    }

    /// <summary>The columns that make a question, those in the most bakes first, and how they are asked about.</summary>
    public static IReadOnlyList<(string Column, ColumnForm Form)> Chosen(IReadOnlyList<Bake> bakes) =>
    [
        .. bakes.SelectMany(bake => bake.Row.OwnColumns.Keys)
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Where(ColumnCells.IsOwn)
            .Select(name => (Cells: ColumnCells.Named(name), Logged: bakes.Where(bake => ColumnCells.Named(name).Text(bake) is not null).ToList()))
            .Where(column => column.Logged.Count >= TermSelection.LeastShareLogged * bakes.Count)
            .Select(column => (column.Cells.Name, Form: FormOf(column.Cells, column.Logged), column.Logged.Count))
            .Where(column => column.Form is not null)
            .OrderByDescending(column => column.Count)
            .ThenBy(column => column.Name, StringComparer.Ordinal)
            .Take(MostColumns)
            .Select(column => (column.Name, column.Form!.Value)),
    ];

    // Numbers make a line. A few words that come back make levels; more of them, or lone ones, are notes.
    private static ColumnForm? FormOf(ColumnCells cells, IReadOnlyList<Bake> logged)
    {
        if (logged.All(bake => cells.Number(bake) is not null))
        {
            return logged.Select(cells.Number).Distinct().Skip(1).Any() ? ColumnForm.Line : null;
        }

        var counts = logged.CountBy(bake => cells.Text(bake)!, StringComparer.OrdinalIgnoreCase).Select(word => word.Value).ToList();
        return counts.Count is >= 2 and <= MostWords && counts.TrueForAll(count => count >= LeastBakesOfWord) ? ColumnForm.Levels : null;
    }

    // Apart from the names of causes: a journal's own column may be called hydration.
    private static string NameOf(Measure result, string column) => $"{ResultQuestion.KeyOf(result)}.own_{column}";
}
