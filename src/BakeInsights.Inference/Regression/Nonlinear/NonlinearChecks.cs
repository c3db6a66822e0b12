namespace BakeInsights.Inference;

/// <summary>What can be said against a nonlinear fit.</summary>
internal static class NonlinearChecks
{
    private const string OtherStart =
        "Start closer to the solution, give more rows where the parameters matter, or take a simpler model.";

    /// <summary>The first problem of the data; null if there is none.</summary>
    public static FitProblem? Find(NonlinearModel model, Design predictors, DesignColumn response)
    {
        if (predictors.Columns.Append(response).Select(Missing).FirstOrDefault(p => p is not null)
            is { } missing)
        {
            return missing;
        }

        var (n, p) = (predictors.RowCount, model.Parameters.Count);
        return n > p ? null : new FitProblem(
            FitProblemKind.TooFewRows,
            model.Parameters,
            $"There are {n} rows for {p} parameters, and at least {p + 1} are needed.",
            $"Add {p + 1 - n} or more rows, or take a simpler model.");
    }

    private static FitProblem? Missing(DesignColumn column)
    {
        int[] rows = [.. Enumerable.Range(0, column.Values.Count).Where(i => !double.IsFinite(column.Values[i]))];
        return rows.Length == 0 ? null : new FitProblem(
            FitProblemKind.MissingValue,
            [column.Name],
            $"Column {column.Name} has no finite number in {rows.Length} of {column.Values.Count} rows, "
                + $"the first of them row {rows[0] + 1}.",
            "Give the missing numbers or leave these rows out.");
    }

    /// <summary>The problem of a start at which the model has no value.</summary>
    public static FitProblem NoStart(NonlinearModel model) => new(
        FitProblemKind.ImpossibleValue,
        model.Parameters,
        "At the start the model has no finite value in some row, or one whose square can't be computed.",
        "Start from other parameters, or express the data in another unit.");

    /// <summary>The problem of a search without end.</summary>
    public static FitProblem NoEnd(NonlinearModel model) => new(
        FitProblemKind.NoConvergence,
        model.Parameters,
        "The search for the least sum of squares came to no end.",
        OtherStart);

    /// <summary>The problem of a parameter that can be traded for others.</summary>
    public static FitProblem Undetermined(string parameter) => new(
        FitProblemKind.NoConvergence,
        [parameter],
        $"Where the search ended, {parameter} isn't determined: it, or it together with others, can change without "
            + "changing the fit.",
        OtherStart);
}
