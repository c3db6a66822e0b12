using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The question how far groups of bakes, such as the benches of a class or its bakers, lie apart.</summary>
public static class GroupQuestion
{
    /// <summary>
    /// With so few groups their spread can't be told from two numbers: only their difference is.
    /// </summary>
    internal const int FewestForSpread = 3;

    /// <summary>Asks how far groups lie apart, the other causes held still.</summary>
    /// <remarks>
    /// Whether they differ is judged by the F test of fixed groups, which is exact for normal scatter however few they
    /// are. How far each lies off is from a mixed model, which draws a group towards the mean of all as far as its own bakes
    /// are few: Laird and Ware (1982), Biometrics 38, 963-974.
    /// </remarks>
    /// <param name="bakes">The bakes.</param>
    /// <param name="result">The result.</param>
    /// <param name="column">The column that names the groups, such as <c>group</c> or <c>baker</c>.</param>
    /// <param name="heldStill">
    /// The other causes to hold still, as far as the journal varies and bears them; those of the result's own model if
    /// null, none if empty.
    /// </param>
    /// <returns>The answer, or the problem that names the column and what would help.</returns>
    /// <exception cref="ArgumentException">The column's name is blank, or that of the result.</exception>
    public static Attempt<GroupAnswer> Ask(
        IReadOnlyList<Bake> bakes, Measure result, string column = "group", IReadOnlyList<Measure>? heldStill = null)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(result);
        if (ColumnCells.Named(column).Name == result.Name)
        {
            throw new ArgumentException($"{result.Name} can't name the groups of itself.", nameof(column));
        }

        if (!ColumnCells.In(bakes, column).TryGet(out var cells, out var problem))
        {
            return problem;
        }

        var question = ResultQuestion.Of(result);
        var rows = ColumnRows.Select(
            bakes, question, cells, ColumnForm.Levels, [], ResultQuestion.HeldStill(question, heldStill, cells.Name));
        return ColumnProblems.Find(rows) is { } early ? early
            : ColumnFit.Make(rows).TryGet(out var fit, out var found) ? GroupFit.Make(fit).Select(model => new GroupAnswer(model))
            : found;
    }

    /// <summary>The name of the finding about a result and a column of groups.</summary>
    public static string NameOf(Measure result, string column = "group")
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"{ResultQuestion.KeyOf(result)}.between_{ColumnCells.Named(column).Name}";
    }

    /// <summary>The question as one without an answer.</summary>
    public static OpenQuestion Open(Measure result, FitProblem problem, string column = "group")
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new OpenQuestion(NameOf(result, column), Words(ResultQuestion.Of(result), column), problem.Message, problem.Remedy);
    }

    internal static string Words(Question question, string column) =>
        $"Does the {question.Name} differ by {ColumnCells.Named(column).Title}?";
}
