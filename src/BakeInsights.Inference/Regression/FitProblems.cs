namespace BakeInsights.Inference;

/// <summary>The problems that linear fits share, in words.</summary>
internal static class FitProblems
{
    /// <summary>
    /// The magnitudes taken. A coefficient is at most about the ratio of the two, 1e150, and its square stays below the
    /// largest double, 1.8e308. Common practice, no source.
    /// </summary>
    private const double SmallestMagnitude = 1e-75, LargestMagnitude = 1e75;

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

    /// <summary>Numbers that are missing; the first row is counted from 0.</summary>
    public static FitProblem Missing(string column, long missing, long rows, long first) => new(
        FitProblemKind.MissingValue,
        [column],
        $"Column {column} has no finite number in {missing} of {rows} rows, the first of them row {first + 1}.",
        "Give the missing numbers or leave these rows out.");

    /// <summary>The problem of a column by its largest magnitude; null if it can be computed with.</summary>
    public static FitProblem? OutOfRange(string column, double largest) =>
        largest is 0 or (>= SmallestMagnitude and <= LargestMagnitude) ? null : new FitProblem(
            FitProblemKind.OutOfRange,
            [column],
            $"The largest number of column {column} is not between 1e-75 and 1e75 in size, "
                + "so that squares can't be computed.",
            $"Express {column} in another unit.");

    /// <summary>The problem of the number of rows; null if they are enough.</summary>
    public static FitProblem? TooFewRows(IReadOnlyList<string> columns, long rows) =>
        rows > columns.Count ? null : new FitProblem(
            FitProblemKind.TooFewRows,
            columns,
            $"There are {rows} rows for {columns.Count} columns, and at least {columns.Count + 1} are needed.",
            $"Add {columns.Count + 1 - rows} or more rows, or leave columns out.");

    /// <summary>A column of zeros.</summary>
    public static FitProblem Zero(string column) => new(
        FitProblemKind.DependentColumn,
        [column],
        $"Column {column} is zero in every row.",
        $"Leave {column} out, or add rows in which it is not zero.");

    /// <summary>A response without spread.</summary>
    public static FitProblem NoSpread(string response) => new(
        FitProblemKind.NoSpread,
        [response],
        $"Column {response} is the same in every row, so there is nothing to explain.",
        $"Add rows in which {response} differs.");
}
