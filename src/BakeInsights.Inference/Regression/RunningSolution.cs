namespace BakeInsights.Inference;

/// <summary>Solves what running sums have gathered.</summary>
internal static class RunningSolution
{
    public static Attempt<RunningFit> Of(
        TriangleSums<double, PlainArithmetic> sums, ColumnNotes notes, IReadOnlyList<string> columns, int blocks)
    {
        if (notes.Unusable() is { } unusable)
        {
            return unusable;
        }

        var names = Enumerable.Range(1, blocks).Select(k => $"block {k}").Concat(columns).ToArray();
        if (FitProblems.TooFewRows(names, notes.Rows) is { } tooFew)
        {
            return tooFew;
        }

        // A sum of n products, of which the factorization is made, is off by at most about n epsilon.
        var tolerance = Math.Max(notes.Rows, columns.Count + 2) * LeastSquares.Epsilon;
        var (triangle, coordinates) = Solution.Split(sums);
        if (Unexplainable(triangle, notes, columns, blocks, tolerance) is { } problem)
        {
            return problem;
        }

        if (triangle.FirstDependence(tolerance) is var (column, earlier))
        {
            return FitProblems.Dependent(columns[column], [.. earlier.Select(k => columns[k])]);
        }

        var coefficients = triangle.Solve(coordinates);
        var rounding = Solution.Rounding(triangle, coefficients, notes.Length(columns.Count));
        var perfect = Math.Abs(coordinates[^1].High) <= rounding;
        var total = blocks > 0 ? coordinates.Sum(c => c.High * c.High)
            : notes.HasConstant ? notes.SquaredDistances
            : Math.Pow(notes.Length(columns.Count), 2);
        return new RunningFit(
            columns, triangle, perfect ? Solution.WithoutRounding(triangle, coefficients, rounding) : coefficients,
            notes.Rows, blocks, perfect ? 0 : Math.Pow(coordinates[^1].High, 2), total);
    }

    private static FitProblem? Unexplainable(
        Triangle triangle, ColumnNotes notes, IReadOnlyList<string> columns, int blocks, double tolerance)
    {
        for (var j = 0; j < columns.Count; j++)
        {
            if (notes.Length(j) == 0)
            {
                return FitProblems.Zero(columns[j]);
            }

            if (triangle.Lengths[j] <= tolerance * notes.Length(j))
            {
                return new FitProblem(
                    FitProblemKind.DependentColumn,
                    [columns[j]],
                    $"Column {columns[j]} doesn't vary within any block, so its effect can't be told from the blocks'.",
                    $"Leave {columns[j]} out, or add rows in which it varies within a block.");
            }
        }

        var spread = blocks > 0 || notes.HasConstant ? notes.ResponseVaries : notes.Length(columns.Count) > 0;
        return spread ? null : FitProblems.NoSpread(LeastSquares.ResponseName);
    }
}
