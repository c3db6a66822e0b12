namespace BakeInsights;

/// <summary>Asks how the month's groups and bakers differ, where there are several.</summary>
internal static class MonthGroups
{
    private static readonly IReadOnlyList<TextColumn> Columns = [BakeColumns.Group, BakeColumns.Baker];

    // The two results that the month's models are of. More would cost every other question its clearness.
    private static readonly IReadOnlyList<Measure> Results = [Measures.RiseTime, Measures.SpecificVolume];

    /// <summary>Asks it; a grouping that tells the same bakes apart as one before is the same question, and asked once.</summary>
    public static void Ask(Asked asked, IReadOnlyList<Bake> bakes)
    {
        List<TextColumn> before = [];
        foreach (var column in Columns.Where(column => AreSeveral(bakes, column)))
        {
            if (before.Exists(other => Belongs(bakes, column, other) && Belongs(bakes, other, column)))
            {
                continue;
            }

            var around = before.Find(other => Belongs(bakes, column, other));
            foreach (var result in Results)
            {
                if (GroupQuestion.Ask(bakes, result, column.Name).TryGet(out var answer, out var problem))
                {
                    asked.Add(around is null ? answer.Finding : answer.Finding with { Caveats = [Nested(column, around), .. answer.Finding.Caveats] });
                }
                else
                {
                    asked.Add(GroupQuestion.Open(result, problem, column.Name));
                }
            }

            before.Add(column);
        }
    }

    private static string Nested(TextColumn column, TextColumn around) =>
        $"Each {column.Name} belongs to one {around.Name}, so what sets one {column.Name} apart may be the {around.Name}'s.";

    private static bool AreSeveral(IReadOnlyList<Bake> bakes, TextColumn column) =>
        bakes.Select(bake => bake[column]).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Skip(1).Any();

    // Whether each level of one column goes with one level of the other.
    private static bool Belongs(IReadOnlyList<Bake> bakes, TextColumn column, TextColumn around) => bakes
        .GroupBy(bake => bake[column], StringComparer.OrdinalIgnoreCase)
        .All(same => !same.Select(bake => bake[around]).Distinct(StringComparer.OrdinalIgnoreCase).Skip(1).Any());
}
