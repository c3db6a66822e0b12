namespace BakeInsights;

/// <summary>One file of a journal, as it was read.</summary>
/// <param name="Name">The file's name, without its folder.</param>
/// <param name="Kind">What its rows are.</param>
/// <param name="Rows">Rows read, the header left out.</param>
/// <param name="Kept">Rows that were understood; each of the others has a notice of gravity <see cref="Gravity.Refused"/>.</param>
public sealed record JournalFile(string Name, JournalFileKind Kind, int Rows, int Kept)
{
    /// <summary>Rows that nothing came of.</summary>
    public int SetAside => Rows - Kept;
}
