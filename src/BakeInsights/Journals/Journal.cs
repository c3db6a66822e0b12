using System.Globalization;

namespace BakeInsights;

/// <summary>A journal in memory: the bakes that were understood, and a notice for everything that was not.</summary>
/// <param name="Reading">What came of reading it.</param>
/// <param name="Bakes">The bakes, in the order of the files and their lines.</param>
public sealed record Journal(JournalReading Reading, IReadOnlyList<Bake> Bakes)
{
    /// <summary>The name of the folder or file.</summary>
    public string Name => Reading.Name;

    /// <summary>Rows of bakes read, headers left out; always <c>Bakes.Count + SetAside</c>.</summary>
    public int Rows => Reading.Rows;

    /// <summary>Rows of bakes that no bake came of; each has a notice of gravity <see cref="Gravity.Refused"/>.</summary>
    public int SetAside => Reading.SetAside;

    /// <summary>The remarks, in the order of the files and their lines.</summary>
    public IReadOnlyList<Notice> Notices => Reading.Notices;

    /// <summary>The files of the journal: those of bakes in the order of their names, then the others.</summary>
    public IReadOnlyList<JournalFile> Files { get; init; } = [];

    /// <summary>The loaves of <c>loaves.csv</c>, each of a bake in <see cref="Bakes"/>; empty without that file, as all that follow.</summary>
    public IReadOnlyList<Loaf> Loaves { get; init; } = [];

    /// <summary>The attributes of <c>attributes.csv</c>.</summary>
    public IReadOnlyList<ScoredAttribute> Attributes { get; init; } = [];

    /// <summary>The scores of <c>scores.csv</c>, each on the scale of its attribute where that has one.</summary>
    public IReadOnlyList<Score> Scores { get; init; } = [];

    /// <summary>The readings of <c>rise.csv</c>.</summary>
    public IReadOnlyList<RiseReading> RiseReadings { get; init; } = [];

    /// <summary>The readings of <c>probe.csv</c>.</summary>
    public IReadOnlyList<TemperatureReading> TemperatureReadings { get; init; } = [];

    /// <summary>The cups of <c>cups.csv</c>.</summary>
    public IReadOnlyList<WeighedCup> Cups { get; init; } = [];

    /// <summary>The lines of <c>formulas.csv</c>.</summary>
    public IReadOnlyList<FormulaIngredient> FormulaIngredients { get; init; } = [];

    /// <summary>The months that have bakes in them, as 2026-10, in order.</summary>
    public IReadOnlyList<string> Months => [.. Bakes.Select(MonthOf).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>
    /// Reads a journal: a folder with <c>bakes*.csv</c> in it and, as far as it has them, the files that
    /// <see cref="JournalFileKind"/> names; or one CSV file of bakes. What can't be understood in a row becomes a notice.
    /// </summary>
    /// <param name="path">The folder or the file.</param>
    /// <param name="zone">Whose clocks the times of day are from; null for clocks that are never changed.</param>
    /// <param name="hidesNames">Whether bakers and judges are replaced by labels (<see cref="HiddenNames"/>).</param>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static Journal Read(string path, TimeZoneInfo? zone = null, bool hidesNames = false)
    {
        var journal = JournalReader.Read(path, zone);
        return hidesNames ? HiddenNames.Of(journal).In(journal) : journal;
    }

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
