namespace BakeInsights.Inference;

/// <summary>The rows of each group, groups in ordinal order of their labels.</summary>
/// <param name="Names">The labels.</param>
/// <param name="Rows">The rows of each label, in order.</param>
/// <param name="GroupOfRow">The place of each row's group.</param>
internal sealed record Grouping(string[] Names, int[][] Rows, int[] GroupOfRow)
{
    /// <summary>Sorts rows by label.</summary>
    public static Grouping Of(IReadOnlyList<string> labels)
    {
        var byLabel = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var i = 0; i < labels.Count; i++)
        {
            if (!byLabel.TryGetValue(labels[i], out var rows))
            {
                byLabel[labels[i]] = rows = [];
            }

            rows.Add(i);
        }

        var names = byLabel.Keys.ToArray();
        Array.Sort(names, StringComparer.Ordinal);
        var groupOfRow = new int[labels.Count];
        for (var g = 0; g < names.Length; g++)
        {
            foreach (var row in byLabel[names[g]])
            {
                groupOfRow[row] = g;
            }
        }

        return new Grouping(names, [.. names.Select(name => byLabel[name].ToArray())], groupOfRow);
    }

    /// <summary>Whether a column holds one number in each group.</summary>
    public bool IsConstantWithin(IReadOnlyList<double> values) =>
        Rows.All(rows => rows.All(row => values[row] == values[rows[0]]));
}
