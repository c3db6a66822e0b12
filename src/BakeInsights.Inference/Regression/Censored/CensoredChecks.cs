namespace BakeInsights.Inference;

/// <summary>What can be said against a fit of a censored response.</summary>
internal static class CensoredChecks
{
    /// <summary>The first problem of the data; null if there is none.</summary>
    public static FitProblem? Find(Design design, CensoredValue[] values) =>
        Missing(values)
        ?? Impossible(values, v => !(v.Low > 0 || v.Low is null or 0) || !(v.High > 0 || v.High is null),
            "is not a positive number", "Only positive values have a logarithm: correct it or leave the row out.")
        ?? Impossible(values, v => v.High < v.Low, "ends before it begins", "Correct the two bounds.")
        ?? Impossible(values, v => v is { High: null, Low: null or 0 }, "says nothing",
            "Give a bound or leave the row out.")
        ?? DesignProblem(design)
        ?? OneSided(values);

    /// <summary>The problem of a model that meets every row.</summary>
    public static FitProblem ZeroSpread(Design design) => new(
        FitProblemKind.ZeroSpread,
        [CensoredLogNormal.ResponseName, .. design.Names],
        $"The {design.Columns.Count} columns meet the response in every row, so no spread is left to measure "
            + "uncertainty with.",
        "Add rows, leave columns out, or look more often.");

    /// <summary>The problem of columns whose effects grow without bound.</summary>
    public static FitProblem Separation(Design design, NewtonMaximum found)
    {
        // In the direction in which the search was still going, a column counts by how much it moves some row.
        double[] reach = [.. design.Columns.Select((c, j) => Math.Abs(found.Step[j]) * c.Values.Max(Math.Abs))];
        string[] names = [.. design.Names.Where((_, j) => reach[j] > 0.01 * reach.Max())];
        string[] moving = names.Length > 0 ? names : [.. design.Names];
        return new FitProblem(
            FitProblemKind.Separation,
            moving,
            $"The rows whose response has no upper or no lower bound are told from the others by "
                + $"{string.Join(", ", moving)} without error, so the effects have no finite estimate.",
            "Add rows with known bounds on both sides there, or leave a column out.");
    }

    private static FitProblem? Missing(CensoredValue[] values)
    {
        static bool NotFinite(double? bound) => bound is { } b && !double.IsFinite(b);
        int[] rows = [.. Enumerable.Range(0, values.Length)
            .Where(i => NotFinite(values[i].Low) || NotFinite(values[i].High))];
        return rows.Length == 0 ? null : new FitProblem(
            FitProblemKind.MissingValue,
            [CensoredLogNormal.ResponseName],
            $"Column {CensoredLogNormal.ResponseName} has a bound that is no finite number in {rows.Length} of "
                + $"{values.Length} rows, the first of them row {rows[0] + 1}.",
            "Give the missing numbers, say that a bound is unknown, or leave these rows out.");
    }

    private static FitProblem? Impossible(
        CensoredValue[] values, Predicate<CensoredValue> isWrong, string what, string remedy)
    {
        var row = Array.FindIndex(values, isWrong);
        return row < 0 ? null : new FitProblem(
            FitProblemKind.ImpossibleValue,
            [CensoredLogNormal.ResponseName],
            $"Column {CensoredLogNormal.ResponseName} {what} in row {row + 1}.",
            remedy);
    }

    /// <summary>What least squares would say against the design, for a response that differs in every row.</summary>
    private static FitProblem? DesignProblem(Design design) =>
        LeastSquares.Fit(design, [.. Enumerable.Range(1, design.RowCount).Select(i => (double)i)])
            .Match<FitProblem?>(
                _ => null,
                problem => problem.Columns.Contains(CensoredLogNormal.ResponseName)
                    && !design.Names.Contains(CensoredLogNormal.ResponseName) ? null : problem);

    private static FitProblem? OneSided(CensoredValue[] values)
    {
        var above = values.All(v => v.High is null);
        return !above && !values.All(v => v.Low is null or 0) ? null : new FitProblem(
            FitProblemKind.NoSpread,
            [CensoredLogNormal.ResponseName],
            $"The response is known only to lie {(above ? "above" : "below")} its bound in every row, "
                + "so nothing says how it depends on the columns.",
            "Add rows with a known value, or with bounds on both sides.");
    }
}
