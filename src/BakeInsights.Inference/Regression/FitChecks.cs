namespace BakeInsights.Inference;

/// <summary>What can be said against a fit before it is made.</summary>
internal static class FitChecks
{
    /// <summary>
    /// The magnitudes taken. A coefficient is at most about the ratio of the two, 1e150, and its square stays below the
    /// largest double, 1.8e308. Common practice, no source.
    /// </summary>
    private const double SmallestMagnitude = 1e-75, LargestMagnitude = 1e75;

    /// <summary>The first problem of the data themselves; null if there is none.</summary>
    public static FitProblem? Find(Design design, DesignColumn response)
    {
        foreach (var column in design.Columns.Append(response))
        {
            if (NotFinite(column) is { } missing)
            {
                return missing;
            }

            if (OutOfRange(column) is { } outOfRange)
            {
                return outOfRange;
            }
        }

        return TooFewRows(design) ?? Zero(design) ?? NoSpread(design, response);
    }

    /// <summary>The problem of a column that is a combination of earlier ones.</summary>
    public static FitProblem Dependent(string column, string[] earlier)
    {
        var combination = earlier.Length == 1
            ? $"a multiple of {earlier[0]}"
            : $"a combination of {string.Join(", ", earlier[..^1])} and {earlier[^1]}";
        return new FitProblem(
            FitProblemKind.DependentColumn,
            [column, .. earlier],
            $"Column {column} is {combination}, so their effects can't be told apart.",
            $"Leave out one of these columns, or add rows in which {column} varies by itself.");
    }

    private static FitProblem? NotFinite(DesignColumn column)
    {
        var rows = Enumerable.Range(0, column.Values.Count).Where(i => !double.IsFinite(column.Values[i])).ToArray();
        return rows.Length == 0 ? null : new FitProblem(
            FitProblemKind.MissingValue,
            [column.Name],
            $"Column {column.Name} has no finite number in {rows.Length} of {column.Values.Count} rows, "
                + $"the first of them row {rows[0] + 1}.",
            "Give the missing numbers or leave these rows out.");
    }

    private static FitProblem? OutOfRange(DesignColumn column)
    {
        var largest = column.Values.Max(Math.Abs);
        return largest is 0 or (>= SmallestMagnitude and <= LargestMagnitude) ? null : new FitProblem(
            FitProblemKind.OutOfRange,
            [column.Name],
            $"The largest number of column {column.Name} is not between 1e-75 and 1e75 in size, "
                + "so that squares can't be computed.",
            $"Express {column.Name} in another unit.");
    }

    private static FitProblem? TooFewRows(Design design)
    {
        var needed = design.Columns.Count + 1;
        return design.RowCount >= needed ? null : new FitProblem(
            FitProblemKind.TooFewRows,
            design.Names,
            $"There are {design.RowCount} rows for {design.Columns.Count} columns, and at least {needed} are needed.",
            $"Add {needed - design.RowCount} or more rows, or leave columns out.");
    }

    private static FitProblem? Zero(Design design)
    {
        var zero = design.Columns.FirstOrDefault(column => !column.Span.ContainsAnyExcept(0.0));
        return zero is null ? null : new FitProblem(
            FitProblemKind.DependentColumn,
            [zero.Name],
            $"Column {zero.Name} is zero in every row.",
            $"Leave {zero.Name} out, or add rows in which it is not zero.");
    }

    private static FitProblem? NoSpread(Design design, DesignColumn response)
    {
        var none = design.HasConstant ? response.Values[0] : 0;
        return response.Span.ContainsAnyExcept(none) ? null : new FitProblem(
            FitProblemKind.NoSpread,
            [response.Name],
            $"Column {response.Name} is the same in every row, so there is nothing to explain.",
            $"Add rows in which {response.Name} differs.");
    }
}
