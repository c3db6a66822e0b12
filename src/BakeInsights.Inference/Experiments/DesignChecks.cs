namespace BakeInsights.Inference;

/// <summary>What can be said against the candidates of an optimal design.</summary>
internal static class DesignChecks
{
    /// <summary>
    /// A column this near to the span of earlier ones, relatively, is taken for dependent. Common practice, no source.
    /// </summary>
    private const double Negligible = 1e-10;

    /// <summary>The first problem; null if there is none.</summary>
    public static FitProblem? Find(Design candidates, Design? earlier, Design? aims, int runs)
    {
        foreach (var column in candidates.Columns.Concat(earlier?.Columns ?? []).Concat(aims?.Columns ?? []))
        {
            if (column.Values.Any(v => !double.IsFinite(v)))
            {
                return new FitProblem(
                    FitProblemKind.MissingValue,
                    [column.Name],
                    $"Column {column.Name} holds something that is not a finite number.",
                    "Give the missing numbers or leave these rows out.");
            }
        }

        var needed = candidates.Columns.Count - (earlier?.RowCount ?? 0);
        if (runs < needed)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                candidates.Names,
                $"There are {candidates.Columns.Count} columns, and with {runs} more runs there are "
                    + $"{runs + (earlier?.RowCount ?? 0)} in all.",
                $"Plan {needed} or more runs, or leave columns out.");
        }

        return Dependent(candidates, earlier);
    }

    /// <summary>The problem that no start led to a design whose columns are independent.</summary>
    public static FitProblem NoDesign(int runs) => new(
        FitProblemKind.DependentColumn,
        ["candidates"],
        $"No {runs} of the candidates were found that tell all columns apart.",
        "Plan more runs, or leave columns out.");

    private static FitProblem? Dependent(Design candidates, Design? earlier)
    {
        var columns = candidates.Columns.Select(c =>
            (IEnumerable<double>)c.Values).ToArray();
        var basis = new List<double[]>();
        for (var j = 0; j < columns.Length; j++)
        {
            double[] vector = [.. columns[j], .. earlier?.Columns[j].Values ?? []];
            var largest = vector.Max(Math.Abs);
            double[] scaled = [.. vector.Select(v => largest > 0 ? v / largest : 0)];
            var length = Math.Sqrt(OrthonormalColumns.Dot(scaled, scaled));
            foreach (var unit in basis.Concat(basis))
            {
                var share = OrthonormalColumns.Dot(unit, scaled);
                scaled = [.. scaled.Zip(unit, (v, u) => v - (share * u))];
            }

            var left = Math.Sqrt(OrthonormalColumns.Dot(scaled, scaled));
            if (!(left > Negligible * length))
            {
                var name = candidates.Names[j];
                return new FitProblem(
                    FitProblemKind.DependentColumn,
                    [name],
                    $"Column {name} is zero or a combination of the columns before it in all candidates, so no choice "
                        + "of runs can tell its effect apart.",
                    $"Leave {name} out, or add candidates in which it varies by itself.");
            }

            basis.Add([.. scaled.Select(v => v / left)]);
        }

        return null;
    }
}
