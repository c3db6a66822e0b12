namespace BakeInsights.Cli;

/// <summary>What <c>check --json</c> prints.</summary>
/// <param name="Journal">The journal.</param>
internal sealed record CheckJson(JournalJson Journal);

/// <summary>What was read of a journal, for other programs.</summary>
internal sealed record JournalJson(
    int Rows, int Bakes, int SetAside, IReadOnlyDictionary<string, int> NoticeCounts, IReadOnlyList<Notice> Notices)
{
    public static JournalJson From(Journal journal)
    {
        var counts = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var notice in journal.Notices)
        {
            counts[notice.Code] = counts.GetValueOrDefault(notice.Code) + 1;
        }

        return new(journal.Rows, journal.Bakes.Count, journal.SetAside, counts, journal.Notices);
    }
}
