namespace BakeInsights.Cli;

/// <summary>What <c>check --json</c> prints.</summary>
/// <param name="Journal">The journal.</param>
internal sealed record CheckJson(JournalJson Journal);

/// <summary>What was read of a journal, for other programs.</summary>
internal sealed record JournalJson(
    int Rows, int Bakes, int SetAside, IReadOnlyDictionary<string, int> NoticeCounts, IReadOnlyList<Notice> Notices)
{
    public static JournalJson From(JournalReading reading) =>
        new(reading.Rows, reading.Bakes, reading.SetAside, reading.NoticeCounts, reading.Notices);
}
