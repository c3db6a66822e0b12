namespace BakeInsights;

/// <summary>What was read of a journal: the bakes that were understood, and a notice for everything that was not.</summary>
/// <param name="Name">The name of the folder or file.</param>
/// <param name="Rows">Rows read, headers left out; always <c>Bakes.Count + SetAside</c>.</param>
/// <param name="Bakes">The bakes, in the order of the files and their lines.</param>
/// <param name="Notices">All remarks, in the same order.</param>
public sealed record Journal(string Name, int Rows, IReadOnlyList<Bake> Bakes, IReadOnlyList<Notice> Notices)
{
    /// <summary>Rows that no bake came of; each has a notice of gravity <see cref="Gravity.Refused"/>.</summary>
    public int SetAside => Rows - Bakes.Count;

    /// <summary>The months that have bakes in them, each by its first day, in order.</summary>
    public IReadOnlyList<DateOnly> Months =>
        [.. Bakes.Select(bake => FirstOfMonth(bake.BakedOn)).Distinct().Order()];

    /// <summary>
    /// Reads a journal: a folder with <c>bakes*.csv</c> in it, or one CSV file. What can't be understood in a row
    /// becomes a notice.
    /// </summary>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static Journal Read(string path) => JournalReader.Read(path);

    /// <summary>The bakes of one month, in the order of their days; those of one day as they were written.</summary>
    public IReadOnlyList<Bake> BakesOf(DateOnly month) =>
        [.. Bakes.Where(bake => FirstOfMonth(bake.BakedOn) == FirstOfMonth(month)).OrderBy(bake => bake.BakedOn)];

    private static DateOnly FirstOfMonth(DateOnly day) => new(day.Year, day.Month, 1);
}
