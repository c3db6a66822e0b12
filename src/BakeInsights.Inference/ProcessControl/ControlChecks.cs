namespace BakeInsights.Inference;

/// <summary>What can be said against a series before it is charted.</summary>
internal static class ControlChecks
{
    private const string Name = "values";

    /// <summary>The first problem; null if there is none.</summary>
    public static FitProblem? Find(IReadOnlyList<double> values, int needed)
    {
        if (values.Count < needed)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [Name],
                $"There are {values.Count} values, and at least {needed} are needed.",
                $"Add {needed - values.Count} or more values.");
        }

        var missing = Enumerable.Range(0, values.Count).Where(i => !double.IsFinite(values[i])).ToArray();
        return missing.Length == 0 ? null : new FitProblem(
            FitProblemKind.MissingValue,
            [Name],
            $"{missing.Length} of {values.Count} values are not finite numbers, the first of them number "
                + $"{missing[0] + 1}.",
            "Give the missing numbers or leave them out.");
    }

    /// <summary>The problem of a series that never changes.</summary>
    public static FitProblem NoSpread() => new(
        FitProblemKind.NoSpread,
        [Name],
        "No value differs from the one before it, so there is no spread to draw limits from.",
        "Record the values to more digits, or add values.");
}
