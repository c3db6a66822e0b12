using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Why a column can't be answered, in a baker's words.</summary>
internal static class ColumnProblems
{
    // As for a term of the other models.
    private const double MostAside = 1 - TermSelection.LeastShareLogged;

    /// <summary>What stands in the way before any fit; null if nothing does.</summary>
    public static FitProblem? Find(ColumnRows rows)
    {
        var (name, result) = (rows.Column.Name, rows.Question.Name);
        var noText = rows.Form != ColumnForm.Levels ? SetAside(rows, $"no number in {name}") : 0;
        if (noText > MostAside * (noText + rows.Bakes.Count))
        {
            return new FitProblem(
                FitProblemKind.MissingValue,
                [name],
                $"Column {name} has no number in {noText} of {noText + rows.Bakes.Count} bakes, so it can't be asked about as a line or a curve.",
                $"Ask about {name} by its levels, or log a plain number of each bake.");
        }

        var lone = rows.Form == ColumnForm.Levels ? SetAside(rows, $"a {name} that no other bake has") : 0;
        if (lone > MostAside * (lone + rows.Bakes.Count))
        {
            return new FitProblem(
                FitProblemKind.TooFewGroups,
                [name],
                $"Column {name} has something of its own in {lone} of {lone + rows.Bakes.Count} bakes; a comparison takes a few words or numbers that come back.",
                rows.Bakes.Count == 0 && lone < 2
                    ? $"Log bakes that differ in {name}, two or more of each."
                    : $"Log {name} in a few fixed words, two or more bakes of each, or ask about it as a line if it is a number.");
        }

        if (rows.Bakes.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows, [name], $"No bake has both {name} and a {result} that can be used.", $"Log {name} and the {result} of each bake.");
        }

        var levels = rows.LevelsOf(rows.Column).Names;
        var needed = rows.Form == ColumnForm.Curve ? 3 : 2;
        return levels.Count >= needed ? null : new FitProblem(
            FitProblemKind.TooFewGroups,
            [name],
            levels.Count == 1
                ? $"Column {name} never varied: it is {levels[0]} in all {rows.Bakes.Count} bakes that can be used."
                : $"Column {name} was tried at {levels.Count} numbers, and a curve takes 3.",
            levels.Count == 1
                ? $"Bake some doughs that differ in {name}, two or more of each."
                : $"Bake some doughs with a third {name}, or ask about it as a line.");
    }

    /// <summary>Too few bakes for the coefficients.</summary>
    public static FitProblem TooFewBakes(ColumnRows rows, int needed) => new(
        FitProblemKind.TooFewRows,
        [rows.Column.Name],
        $"To compare {rows.Column.Name}{WithBlocks(rows)} takes {needed} bakes, and {rows.Bakes.Count} can be used.",
        $"Log {needed - rows.Bakes.Count} or more bakes, or ask with fewer blocks.");

    /// <summary>A fit that leaves nothing over.</summary>
    public static FitProblem NothingLeft(ColumnRows rows) => new(
        FitProblemKind.ZeroSpread,
        [rows.Question.Name],
        $"The model meets every bake's {rows.Question.Name} exactly, so there is no scatter to compare {rows.Column.Name} with.",
        $"Log the {rows.Question.Name} as it was measured, not as it was worked out.");

    /// <summary>The problem that least squares found.</summary>
    public static FitProblem Of(ColumnRows rows, FitProblem problem, string heldPrefix) => problem.Kind switch
    {
        FitProblemKind.NoSpread => new(
            FitProblemKind.NoSpread,
            [rows.Question.Name],
            $"The {rows.Question.Name} is the same in all {rows.Bakes.Count} bakes, so there is nothing to explain.",
            $"Log bakes that differ in their {rows.Question.Name}."),
        FitProblemKind.DependentColumn => new(
            FitProblemKind.DependentColumn,
            [NameOf(rows, problem.Columns[0])],
            $"In this journal {NameOf(rows, problem.Columns[0])} moved together with {string.Join(" and ", Others(problem, heldPrefix))}, so the two can't be told apart.",
            $"Bake some doughs that differ in {NameOf(rows, problem.Columns[0])} alone, or ask without what it moved with."),
        _ => problem,
    };

    /// <summary>What a dependent column moved with, in words.</summary>
    public static IReadOnlyList<string> Others(FitProblem problem, string heldPrefix)
    {
        string[] others =
        [
            .. problem.Columns.Skip(1).Where(name => name != "constant")
                .Select(name => name.Replace(heldPrefix, "", StringComparison.Ordinal).Split(" = ")[0])
                .Where(name => name != problem.Columns[0].Split(" = ")[0]).Select(name => name.Replace('_', ' ')).Distinct(),
        ];
        return others.Length > 0 ? others : ["nothing else, and never varied"];
    }

    private static string NameOf(ColumnRows rows, string column) => rows.Blocks.Select(block => block.Name)
        .FirstOrDefault(name => column.StartsWith(name + " = ", StringComparison.Ordinal)) ?? rows.Column.Name;

    private static int SetAside(ColumnRows rows, string reason) =>
        rows.LeftOutBakes.Where(left => left.Reason == reason).Sum(left => left.Count);

    private static string WithBlocks(ColumnRows rows) =>
        rows.Blocks.Count == 0 ? "" : $" within {string.Join(" and ", rows.Blocks.Select(block => block.Name))}";
}
