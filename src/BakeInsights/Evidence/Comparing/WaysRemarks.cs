namespace BakeInsights;

/// <summary>What two ways can't be told from.</summary>
internal static class WaysRemarks
{
    private static readonly (string Column, string Words)[] Shared =
    [
        (BakeColumns.BakedOn.Name, "day"), (BakeColumns.Group.Name, "group"), (BakeColumns.Baker.Name, "baker"),
        (BakeColumns.FlourKind.Name, "kind of flour"),
    ];

    /// <summary>One sentence each.</summary>
    public static IEnumerable<string> Of(WaysSplit split, IReadOnlyList<ResultCompared> compared)
    {
        foreach (var (column, words) in Shared.Where(shared => shared.Column != split.Cells.Name))
        {
            if (split.Shared(split.Both, column) is (0, > 1))
            {
                yield return column == BakeColumns.BakedOn.Name
                    ? "They were never baked on the same day, so what else differed from day to day is in the difference."
                    : $"No {words} had both, so the {words}'s own part is in the difference.";
            }
        }

        // What a formula is made of belongs to it.
        Measure[] outside = split.IsOfFormulas
            ? [Measures.DoughTemperature, Measures.RoomTemperature]
            : [Measures.DoughTemperature, Measures.RoomTemperature, Measures.Hydration, Measures.Yeast, Measures.Salt];
        foreach (var setting in outside.Where(setting => setting.Name != split.Cells.Name))
        {
            if (TwoWays.Beside(split, setting) is { AreApart: true })
            {
                yield return $"Every {setting.Words} of one lies above every one of the other, so its part can't be told from theirs.";
            }
            else if (compared.Any(one => one.Finding.MovedTogetherWith.Contains(setting)))
            {
                yield return $"The {setting.Words} went with the two so closely that its part can hardly be told from theirs.";
            }
        }
    }
}
