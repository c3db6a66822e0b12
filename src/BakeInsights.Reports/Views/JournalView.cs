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
        var counts = new ViewParagraph(
            $"Journal {journal.Name}: {Count(journal.Rows, "row")} read, {Count(journal.Bakes.Count, "bake")} kept, "
            + $"{Count(journal.SetAside, "row")} set aside.");
        return journal.Notices.Count == 0
            ? new View([counts, new ViewParagraph("Every cell was understood.")])
            : new View([counts, TableOf(journal.Notices)]);
    }

    /// <summary>"1 bake", "2 bakes".</summary>
    internal static string Count(int count, string noun) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {noun}{(count == 1 ? "" : "s")}";

    private static ViewTable TableOf(IReadOnlyList<Notice> notices) => new(
        $"{Count(notices.Count, "notice")}: refused, a row was set aside; unread, a cell counts as missing; "
            + "doubted, kept but look again; noted, for information.",
        [
            new ViewColumn("Where", false),
            new ViewColumn("Gravity", false),
            new ViewColumn("As written", false),
            new ViewColumn("What is odd", false),
            new ViewColumn("What to do", false),
        ],
        [
            .. notices.OrderByDescending(notice => notice.Gravity).Select(notice => new[]
            {
                Where(notice), notice.Gravity.ToString().ToLowerInvariant(), Shortened(notice.Text), notice.Message, notice.Remedy,
            }),
        ]);

    private static string Where(Notice notice)
    {
        var place = $"{notice.File} line {notice.Line.ToString(CultureInfo.InvariantCulture)}";
        return notice.Column.Length > 0 ? $"{place}, {notice.Column}" : place;
    }

    private static string Shortened(string text) => text.Length <= LongestText ? text : text[..(LongestText - 1)] + "…";
}
