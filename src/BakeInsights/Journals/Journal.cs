using System.Globalization;

namespace BakeInsights;

/// <summary>A journal in memory: the bakes that were understood, and a notice for everything that was not.</summary>
/// <param name="Reading">What came of reading it.</param>
/// <param name="Bakes">The bakes, in the order of the files and their lines.</param>
public sealed record Journal(JournalReading Reading, IReadOnlyList<Bake> Bakes)
{
    /// <summary>The name of the folder or file.</summary>
    public string Name => Reading.Name;

    /// <summary>Rows read, headers left out; always <c>Bakes.Count + SetAside</c>.</summary>
    public int Rows => Reading.Rows;

    /// <summary>Rows that no bake came of; each has a notice of gravity <see cref="Gravity.Refused"/>.</summary>
    public int SetAside => Reading.SetAside;

    /// <summary>The remarks, in the order of the files and their lines.</summary>
    public IReadOnlyList<Notice> Notices => Reading.Notices;

    /// <summary>The months that have bakes in them, as 2026-10, in order.</summary>
    public IReadOnlyList<string> Months => [.. Bakes.Select(MonthOf).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>
    /// Reads a journal: a folder with <c>bakes*.csv</c> in it, or one CSV file. What can't be understood in a row
    /// becomes a notice.
    /// </summary>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static Journal Read(string path) => JournalReader.Read(path);

    /// <summary>The bakes of one month, in the order of their days; those of one day as they were written.</summary>
    /// <param name="month">The month as 2026-10; empty for the journal's last.</param>
    /// <exception cref="ArgumentException">The journal has no bakes in that month; the message names those it has.</exception>
    public IReadOnlyList<Bake> BakesOfMonth(string month)
    {
        ArgumentNullException.ThrowIfNull(month);
        var months = Months;
        if (months.Count == 0)
        {
            throw new ArgumentException($"The journal {Name} has no bakes yet.", nameof(month));
        }

        var wanted = month.Length == 0 ? months[^1] : month;
        return months.Contains(wanted)
            ? [.. Bakes.Where(bake => MonthOf(bake) == wanted).OrderBy(bake => bake.BakedOn)]
            : throw new ArgumentException(
                $"The journal {Name} has no bakes in '{wanted}'; it has {string.Join(", ", months)}.", nameof(month));
    }

    private static string MonthOf(Bake bake) => bake.BakedOn.ToString("yyyy-MM", CultureInfo.InvariantCulture);
}
