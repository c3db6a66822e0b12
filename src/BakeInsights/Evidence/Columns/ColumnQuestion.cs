using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The question whether a result goes with a column of the journal, the baker's own ones included.</summary>
public static class ColumnQuestion
{
    /// <summary>Asks whether a result goes with a column.</summary>
    /// <remarks>
    /// Least squares of the result, or of the logarithm of a time, on the column with blocks and other causes in the
    /// model; the column is judged by the F test of its own terms, which is exact for normal scatter however few the
    /// bakes. Draper and Smith (1998), Applied Regression Analysis, 3rd ed., chapters 6 and 14.
    /// </remarks>
    /// <param name="bakes">The bakes.</param>
    /// <param name="result">The result; <see cref="ColumnMeasure"/> makes one of any column of numbers.</param>
    /// <param name="column">The name of a column of the journal, or of a measure. Letter case doesn't matter.</param>
    /// <param name="form">How the result may go with it.</param>
    /// <param name="blocks">
    /// Columns whose differences are set aside, such as <c>flour_kind</c> or <c>baker</c>: bakes are compared within them.
    /// None if null.
    /// </param>
    /// <param name="heldStill">
    /// The other causes to hold still, as far as the journal varies and bears them; those of the result's own model if
    /// null, none if empty.
    /// </param>
    /// <returns>The answer, or the problem that names the column and what would help.</returns>
    /// <exception cref="ArgumentException">
    /// A name is blank, the column is the result itself or among the blocks, or a block is named twice.
    /// </exception>
    public static Attempt<ColumnAnswer> Ask(
        IReadOnlyList<Bake> bakes,
        Measure result,
        string column,
        ColumnForm form,
        IReadOnlyList<string>? blocks = null,
        IReadOnlyList<Measure>? heldStill = null)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(result);
        string[] names = [column, .. blocks ?? []];
        Refuse(result, [.. names.Select(name => ColumnCells.Named(name).Name)]);
        var found = new List<ColumnCells>();
        foreach (var name in names)
        {
            if (!ColumnCells.In(bakes, name).TryGet(out var cells, out var problem))
            {
                return problem;
            }

            found.Add(cells);
        }

        var question = ResultQuestion.Of(result);
        var rows = ColumnRows.Select(
            bakes, question, found[0], form, [.. found.Skip(1)], ResultQuestion.HeldStill(question, heldStill, found[0].Name));
        return ColumnProblems.Find(rows) is { } early ? early : ColumnFit.Make(rows).Select(fit => new ColumnAnswer(fit));
    }

    /// <summary>The question as one without an answer.</summary>
    public static OpenQuestion Open(Measure result, string column, FitProblem problem)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(problem);
        var cells = ColumnCells.Named(column);
        return new OpenQuestion(
            $"{ResultQuestion.KeyOf(result)}.{cells.Name}",
            $"Does the {ResultQuestion.Of(result).Name} differ by {cells.Title}?",
            problem.Message,
            problem.Remedy);
    }

    private static void Refuse(Measure result, string[] names)
    {
        if (names.Distinct(StringComparer.OrdinalIgnoreCase).Count() < names.Length)
        {
            throw new ArgumentException("A column is named twice among the column and its blocks.", nameof(names));
        }

        if (names.Contains(result.Name))
        {
            throw new ArgumentException($"{result.Name} can't be the cause of itself.", nameof(result));
        }
    }
}
