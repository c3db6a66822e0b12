namespace BakeInsights.Tests;

/// <summary>Bakes with a rise time, a dough temperature, a group and cells of the baker's own.</summary>
internal static class OwnColumnBakes
{
    public static Bake Of(int index, double minutes, double celsius = 24, string? group = null, params (string Column, string Cell)[] own)
    {
        var draft = new BakeDraft($"B{index + 1}", new DateOnly(2026, 10, 1).AddDays(index % 28))
            .Set(BakeColumns.Rise, minutes).Set(BakeColumns.DoughTemp, celsius);
        if (group is not null)
        {
            draft.Set(BakeColumns.Group, group);
        }

        foreach (var (column, cell) in own)
        {
            draft.Keep(column, cell);
        }

        return draft.Finish(new SourceLine("bakes.csv", index + 2));
    }

    /// <summary>A dozen bakes with a column whose cell each test decides; minutes scatter a little.</summary>
    public static IReadOnlyList<Bake> Dozen(Func<int, string> cell) =>
        [.. Enumerable.Range(0, 12).Select(i => Of(i, 90 + (i * 7 % 5), own: ("kneading", cell(i))))];
}
