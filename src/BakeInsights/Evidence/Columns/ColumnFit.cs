using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Least squares of a result on a column, blocks, and the causes that are held still.</summary>
/// <param name="Rows">The bakes and what is asked.</param>
/// <param name="Fit">The fit: a constant, the blocks, the causes held still, and the column's own terms last.</param>
/// <param name="Test">The F test of the column's own terms.</param>
/// <param name="BlockTests">The F test of each block.</param>
internal sealed record ColumnFit(ColumnRows Rows, LeastSquaresFit Fit, NestedComparison Test, IReadOnlyList<BlockTest> BlockTests)
{
    /// <summary>The name of the column's squared term, behind the column's name.</summary>
    public const string SquaredSuffix = " squared";

    private const string HeldPrefix = "held still: ";

    /// <summary>The scale of the model.</summary>
    public ResultScale Scale => Rows.Question.Scale;

    /// <summary>The fit that the bakes support, the least important causes held still left out where they can't.</summary>
    public static Attempt<ColumnFit> Make(ColumnRows rows)
    {
        while (true)
        {
            var parts = ColumnParts.Of(rows, HeldPrefix);
            var needed = TermSelection.BakesNeeded(parts.All.Count());
            if (rows.Bakes.Count < needed)
            {
                if (rows.HeldStill.Count == 0)
                {
                    return ColumnProblems.TooFewBakes(rows, needed);
                }

                rows = rows.Less(rows.HeldStill[^1], $"It would take {needed} bakes, and there are {rows.Bakes.Count}.");
                continue;
            }

            double[] response = [.. rows.Bakes.Select(rows.Question.ResponseOf)];
            var constant = DesignColumn.Constant(response.Length);
            if (LeastSquares.Fit(new Design([constant, .. parts.All]), response).TryGet(out var fit, out var problem))
            {
                return Tested(rows, parts, constant, fit);
            }

            if (problem.Kind == FitProblemKind.DependentColumn
                && rows.HeldStill.FirstOrDefault(term => HeldPrefix + term.Name == problem.Columns[0]) is { } entangled)
            {
                rows = rows.Less(entangled, $"It moved together with {string.Join(" and ", ColumnProblems.Others(problem, HeldPrefix))}.");
                continue;
            }

            return ColumnProblems.Of(rows, problem, HeldPrefix);
        }
    }

    /// <summary>The row of column values of the average bake used, for the column's own terms as given.</summary>
    public double[] AverageRow(params double[] own)
    {
        var others = Fit.Terms.Count - own.Length;
        return [.. Fit.Design.Columns.Take(others).Select(column => column.Values.Average()), .. own];
    }

    /// <summary>The weights that pick a difference of the column's own terms.</summary>
    public double[] OwnWeights(params double[] own) => [.. Enumerable.Repeat(0.0, Fit.Terms.Count - own.Length), .. own];

    private static Attempt<ColumnFit> Tested(ColumnRows rows, ColumnParts parts, DesignColumn constant, LeastSquaresFit fit)
    {
        NestedComparison Compare(IEnumerable<DesignColumn> rest) =>
            LeastSquares.Compare(LeastSquares.Fit(new Design([constant, .. rest]), fit.Response).Value, fit);

        var test = Compare([.. parts.Blocks.SelectMany(block => block), .. parts.HeldStill]);
        if (test.PValue is null)
        {
            return ColumnProblems.NothingLeft(rows);
        }

        BlockTest[] blockTests =
        [
            .. rows.Blocks.Zip(parts.Blocks).Where(block => block.Second.Count > 0).Select(block => new BlockTest(
                block.First.Name,
                block.Second.Count + 1,
                Compare([.. parts.Blocks.Where(other => other != block.Second).SelectMany(other => other), .. parts.HeldStill, .. parts.Own]))),
        ];
        return new ColumnFit(rows, fit, test, blockTests);
    }
}
