namespace BakeInsights;

/// <summary>A month and the one before it that has bakes.</summary>
/// <param name="Month">The month, as 2026-10.</param>
/// <param name="Before">The latest earlier month with bakes; null where the journal begins with this one.</param>
/// <param name="Bakes">The month's bakes, in order of their days.</param>
/// <param name="BakesBefore">Those of the month before.</param>
internal sealed record TwoMonths(string Month, string? Before, IReadOnlyList<Bake> Bakes, IReadOnlyList<Bake> BakesBefore)
{
    /// <summary>Finds both.</summary>
    /// <exception cref="ArgumentException">The journal has no bakes in that month.</exception>
    public static TwoMonths Of(Journal journal, string month)
    {
        var bakes = journal.BakesOfMonth(month);
        var name = month.Length == 0 ? journal.Months[^1] : month;
        var before = journal.Months.LastOrDefault(other => string.CompareOrdinal(other, name) < 0);
        return new TwoMonths(name, before, bakes, before is null ? [] : journal.BakesOfMonth(before));
    }

    /// <summary>What is compared.</summary>
    public Contrast Contrast => Contrast.Between($"{Month} against {Before}");
}
