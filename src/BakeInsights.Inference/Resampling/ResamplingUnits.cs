namespace BakeInsights.Inference;

/// <summary>What is drawn with replacement: single rows, or whole clusters of rows that belong together.</summary>
/// <param name="Rows">The rows of each unit.</param>
/// <param name="RowCount">The number of rows in all.</param>
internal sealed record ResamplingUnits(int[][] Rows, int RowCount)
{
    /// <summary>The number of units.</summary>
    public int Count => Rows.Length;

    /// <summary>The units of a data set.</summary>
    /// <param name="rowCount">The number of rows.</param>
    /// <param name="clusters">The cluster of each row; null if rows are drawn singly.</param>
    /// <exception cref="ArgumentException">There is another number of labels, or one is blank.</exception>
    public static ResamplingUnits Of(int rowCount, IReadOnlyList<string>? clusters)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rowCount);
        if (clusters is null)
        {
            return new ResamplingUnits([.. Enumerable.Range(0, rowCount).Select(i => new[] { i })], rowCount);
        }

        if (clusters.Count != rowCount)
        {
            throw new ArgumentException(
                $"There are {clusters.Count} cluster labels and {rowCount} rows.", nameof(clusters));
        }

        return clusters.Any(string.IsNullOrWhiteSpace)
            ? throw new ArgumentException("Every row needs a cluster: leave unlabelled rows out.", nameof(clusters))
            : new ResamplingUnits(Grouping.Of(clusters).Rows, rowCount);
    }

    /// <summary>The rows of one resample, unit by unit.</summary>
    public int[] Draw(SeededStream stream)
    {
        var rows = new List<int>(RowCount);
        for (var draw = 0; draw < Count; draw++)
        {
            rows.AddRange(Rows[stream.Below(Count)]);
        }

        return [.. rows];
    }

    /// <summary>All rows but those of one unit.</summary>
    public int[] Without(int unit) => [.. Rows.Where((_, u) => u != unit).SelectMany(rows => rows)];

    /// <summary>The problem of there being one unit only; null if there are more.</summary>
    public FitProblem? Find(string name) => Count > 1 ? null : new FitProblem(
        FitProblemKind.TooFewRows,
        [name],
        $"There is one row or cluster only, so drawing from them again says nothing about {name}.",
        "Add rows or clusters.");
}
