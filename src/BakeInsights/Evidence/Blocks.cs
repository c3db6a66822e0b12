using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// Groups of bakes that a model lets differ by a level of their own, so that a bench's or a flour's own way is not
/// taken for the work of a cause. A dough's row in the model is that of the mean over the groups.
/// </summary>
/// <param name="Column">What the groups are by.</param>
/// <param name="Words">That in words.</param>
/// <param name="Columns">The model's columns: one a group but the last, whose level is minus the others' sum.</param>
internal sealed record Blocks(TextColumn Column, string Words, IReadOnlyList<DesignColumn> Columns)
{
    // Our own choice: more groups than this are better pooled than given a level each.
    private const int MostGroups = 12;

    // Our own choice: a group of one or two bakes tells little of its level, and ten bakes to spare keep intervals from
    // widening by more than a tenth (Student's quantile at 10 degrees of freedom is 1.14 times the normal one).
    private const int LeastBakesInGroup = 3;
    private const int LeastBakesToSpare = 10;

    private static readonly (TextColumn Column, string Words)[] Candidates =
    [
        (BakeColumns.Group, "group"), (BakeColumns.FlourKind, "kind of flour"), (BakeColumns.Baker, "baker"),
    ];

    /// <summary>The groupings that these bakes can afford beside a number of coefficients, the most important first.</summary>
    public static IReadOnlyList<Blocks> Of(IReadOnlyList<Bake> bakes, int coefficients)
    {
        List<Blocks> found = [];
        foreach (var (column, words) in Candidates)
        {
            var sizes = bakes.GroupBy(bake => bake[column] ?? "").ToList();
            var spare = bakes.Count - coefficients - found.Sum(block => block.Columns.Count) - (sizes.Count - 1);
            if (sizes.Count is >= 2 and <= MostGroups && spare >= LeastBakesToSpare
                && sizes.All(group => group.Key.Length > 0 && group.Count() >= LeastBakesInGroup))
            {
                found.Add(new Blocks(column, words, ColumnsOf(words, bakes, column, [.. sizes.Select(group => group.Key).Order(StringComparer.Ordinal)])));
            }
        }

        return found;
    }

    private static IReadOnlyList<DesignColumn> ColumnsOf(string words, IReadOnlyList<Bake> bakes, TextColumn column, string[] groups) =>
    [
        .. groups.SkipLast(1).Select(group => new DesignColumn(
            $"{words} {group}",
            [.. bakes.Select(bake => bake[column] == group ? 1.0 : bake[column] == groups[^1] ? -1.0 : 0.0)])),
    ];
}
