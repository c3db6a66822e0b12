namespace BakeInsights.Inference;

/// <summary>What can be said against a fit of ordered scores.</summary>
internal static class OrdinalChecks
{
    /// <summary>The first problem of the data; null if there is none.</summary>
    public static FitProblem? Find(Design design, IReadOnlyList<double> scores)
    {
        if (design.Columns.FirstOrDefault(c => c.IsConstant) is { } flat)
        {
            return new FitProblem(
                FitProblemKind.DependentColumn,
                [flat.Name],
                $"Column {flat.Name} is the same in every row, which the thresholds between scores stand for already.",
                $"Leave {flat.Name} out.");
        }

        // A column of ones stands for the thresholds: what depends on it can't be told from them.
        var name = "thresholds";
        while (design.Names.Contains(name))
        {
            name += " of scores";
        }

        var ones = new DesignColumn(name, DesignColumn.Constant(design.RowCount).Values);
        if (LeastSquares.Fit(new Design(design.Columns.Prepend(ones)), scores)
            .Match<FitProblem?>(_ => null, problem => problem) is { } problem)
        {
            return problem;
        }

        var needed = design.Columns.Count + scores.Distinct().Count();
        return design.RowCount >= needed ? null : new FitProblem(
            FitProblemKind.TooFewRows,
            [CumulativeLogit.ResponseName, .. design.Names],
            $"There are {design.RowCount} rows for {design.Columns.Count} columns and "
                + $"{scores.Distinct().Count()} different scores, and at least {needed} are needed.",
            $"Add {needed - design.RowCount} or more rows, join scores, or leave columns out.");
    }

    /// <summary>The problem of columns that tell scores apart without error.</summary>
    public static FitProblem Separation(Design design, OrdinalData data, NewtonMaximum found)
    {
        // If no column does it alone: in the direction in which the search was still going, a column counts by how
        // far it moves rows apart.
        double[] reach = [.. design.Columns.Select((c, j) =>
            Math.Abs(found.Step[data.ThresholdCount + j]) * (c.Values.Max() - c.Values.Min()))];
        string[] names = [.. design.Names.Where((_, j) => reach[j] > 0.01 * reach.Max())];
        string[] alone = [.. design.Names.Where((_, j) => SortsScores(data, j, 1) || SortsScores(data, j, -1))];
        string[] moving = alone.Length > 0 ? alone : names.Length > 0 ? names : [.. design.Names];
        return new FitProblem(
            FitProblemKind.Separation,
            moving,
            $"Higher and lower scores are told apart by {string.Join(", ", moving)} without error, so the effects "
                + "have no finite estimate.",
            "Add rows in which higher and lower scores overlap there, join scores, or leave a column out.");
    }

    /// <summary>Whether a column, up to a sign, is nowhere higher in a lower category than in the next one.</summary>
    private static bool SortsScores(OrdinalData data, int column, int sign)
    {
        var byCategory = data.Category.Zip(data.Columns[column], (category, x) => (category, x: sign * x))
            .GroupBy(row => row.category, row => row.x)
            .OrderBy(group => group.Key)
            .Select(group => (Lowest: group.Min(), Highest: group.Max()))
            .ToArray();
        return byCategory.Zip(byCategory.Skip(1)).All(pair => pair.First.Highest <= pair.Second.Lowest);
    }

    /// <summary>The problem of raters that can't be told from rows; null if there is none.</summary>
    public static FitProblem? Raters(IReadOnlyList<string> raters)
    {
        var counts = raters.CountBy(r => r).ToArray();
        return counts.Length > 1 && counts.Any(c => c.Value > 1) ? null : new FitProblem(
            FitProblemKind.TooFewGroups,
            ["rater"],
            counts.Length == 1
                ? "All scores are one rater's, so nothing says how raters differ."
                : "No rater gave two scores, so raters can't be told from rows.",
            counts.Length == 1 ? "Add scores of other raters, or fit without raters." : "Add scores of these raters.");
    }
}
