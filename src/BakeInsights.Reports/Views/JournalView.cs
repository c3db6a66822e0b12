using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>What was read of a journal, and what was not.</summary>
public static class JournalView
{
    private const int LongestText = 40;

    /// <summary>The counts, and a table of all notices, the gravest first.</summary>
    public static View Of(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return Of(journal.Reading);
    }

    /// <summary>The counts, and a table of all notices, the gravest first.</summary>
    public static View Of(JournalReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var counts = new ViewParagraph(
            $"Journal {reading.Name}: {Count(reading.Rows, "row")} read, {Count(reading.Bakes, "bake")} kept, "
            + $"{Count(reading.SetAside, "row")} set aside.");
        return reading.Notices.Count == 0
            ? new View([counts, new ViewParagraph("Every cell was understood.")])
            : new View([counts, TableOf(reading)]);
    }

    /// <summary>"1 bake", "2 bakes".</summary>
    internal static string Count(int count, string noun) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {noun}{(count == 1 ? "" : "s")}";

    private static ViewTable TableOf(JournalReading reading) => new(
        $"{Total(reading)}: refused, a row was set aside; unread, a cell counts as missing; "
            + "doubted, kept but look again; noted, for information.",
        [
            new ViewColumn("Where", false),
            new ViewColumn("Gravity", false),
            new ViewColumn("As written", false),
            new ViewColumn("What is odd", false),
            new ViewColumn("What to do", false),
        ],
        [
            .. reading.Notices.OrderByDescending(notice => notice.Gravity).Select(notice => new[]
            {
                Where(notice), notice.Gravity.ToString().ToLowerInvariant(), Shortened(notice.Text), notice.Message, notice.Remedy,
            }),
        ]);

    private static string Total(JournalReading reading)
    {
        var all = reading.NoticeCounts.Values.Sum();
        return all == reading.Notices.Count
            ? Count(all, "notice")
            : $"{Count(all, "notice")}, of which the first of each kind are shown";
    }

    private static string Where(Notice notice)
    {
        var place = $"{notice.File} line {notice.Line.ToString(CultureInfo.InvariantCulture)}";
        return notice.Column.Length > 0 ? $"{place}, {notice.Column}" : place;
    }

    private static string Shortened(string text) => text.Length <= LongestText ? text : text[..(LongestText - 1)] + "…";
}
