using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>
/// Replaces the names of bakers and judges by labels that stay the same in one journal: "baker A", "judge A", in the
/// order in which the names first appear. Immutable.
/// </summary>
/// <remarks>
/// A name is replaced wherever it stands as a whole word in any letter case: in its own cell, in notes and all other
/// texts, in the journal's own columns and their names, in notices and in names of files. A nickname that no cell of
/// bakers or judges holds is not known and stays. Of a row that could not be taken apart the text is not shown at all.
/// </remarks>
public sealed class HiddenNames
{
    private const string RowText = "(not shown)";

    private readonly Dictionary<string, string> _labels;
    private readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly int[] _lengths;

    internal HiddenNames(IReadOnlyDictionary<string, string> labels)
    {
        _labels = new(labels, StringComparer.OrdinalIgnoreCase);
        _lookup = _labels.GetAlternateLookup<ReadOnlySpan<char>>();
        _lengths = [.. labels.Keys.Select(name => name.Length).Distinct().OrderDescending()];
    }

    /// <summary>The labels, by the name that each stands for.</summary>
    public ImmutableDictionary<string, string> Labels => _labels.ToImmutableDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The names of a journal.</summary>
    public static HiddenNames Of(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        var names = new NameCollector();
        foreach (var bake in journal.Bakes)
        {
            names.Add(bake.Row);
        }

        foreach (var score in journal.Scores)
        {
            names.AddJudge(score.Judge);
        }

        foreach (var cup in journal.Cups)
        {
            names.AddBaker(cup.Measurer);
        }

        return names.Finish();
    }

    /// <summary>The text with labels for names; of two names that begin at one place the longer is meant.</summary>
    public string In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var hidden = new System.Text.StringBuilder(text.Length);
        for (var at = 0; at < text.Length;)
        {
            var length = LengthAt(text, at, out var label);
            hidden.Append(length > 0 ? label : text.AsSpan(at, 1));
            at += Math.Max(1, length);
        }

        return hidden.ToString();
    }

    /// <summary>The bake with labels for names, in all its texts.</summary>
    public Bake In(Bake bake)
    {
        ArgumentNullException.ThrowIfNull(bake);
        return new Bake(In(bake.Row));
    }

    /// <summary>The notice with labels for names.</summary>
    public Notice In(Notice notice)
    {
        ArgumentNullException.ThrowIfNull(notice);
        return notice with
        {
            File = In(notice.File),
            Column = In(notice.Column),
            Text = notice.Column.Length == 0 ? RowText : In(notice.Text),
            Message = In(notice.Message),
            Remedy = In(notice.Remedy),
        };
    }

    /// <summary>What came of a reading, with labels for names.</summary>
    public JournalReading In(JournalReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading with { Name = In(reading.Name), Notices = [.. reading.Notices.Select(In)] };
    }

    /// <summary>The journal with labels for names.</summary>
    public Journal In(Journal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        return new Journal(In(journal.Reading), [.. journal.Bakes.Select(In)])
        {
            Files = [.. journal.Files.Select(file => file with { Name = In(file.Name) })],
            Loaves = [.. journal.Loaves.Select(loaf => loaf with { BakeId = In(loaf.BakeId), OwnColumns = In(loaf.OwnColumns) })],
            Attributes = [.. journal.Attributes.Select(attribute => attribute with { OwnColumns = In(attribute.OwnColumns) })],
            Scores =
            [
                .. journal.Scores.Select(score => score with
                {
                    BakeId = In(score.BakeId),
                    Judge = score.Judge is { } judge ? In(judge) : null,
                    OwnColumns = In(score.OwnColumns),
                }),
            ],
            RiseReadings = [.. journal.RiseReadings.Select(reading => reading with { BakeId = In(reading.BakeId), OwnColumns = In(reading.OwnColumns) })],
            TemperatureReadings =
                [.. journal.TemperatureReadings.Select(reading => reading with { BakeId = In(reading.BakeId), OwnColumns = In(reading.OwnColumns) })],
            Cups =
            [
                .. journal.Cups.Select(cup => cup with
                {
                    Measurer = cup.Measurer is { } measurer ? In(measurer) : null,
                    OwnColumns = In(cup.OwnColumns),
                }),
            ],
            FormulaIngredients = [.. journal.FormulaIngredients.Select(line => line with { OwnColumns = In(line.OwnColumns) })],
        };
    }

    /// <summary>A copy of the row with labels for names.</summary>
    internal RowValues In(RowValues row)
    {
        var hidden = row.Copy();
        hidden.File = In(row.File);
        foreach (var column in row.OwnColumns.Keys)
        {
            hidden.Forget(column);
        }

        foreach (var (column, text) in row.OwnColumns)
        {
            hidden.Keep(In(column), In(text));
        }

        for (var i = 0; i < hidden.Texts.Length; i++)
        {
            hidden.Texts[i] = row.Texts[i] is { } text ? In(text) : null;
        }

        return hidden;
    }

    private ImmutableSortedDictionary<string, string> In(ImmutableSortedDictionary<string, string> cells) =>
        cells.ToImmutableSortedDictionary(cell => In(cell.Key), cell => In(cell.Value), StringComparer.Ordinal);

    private int LengthAt(string text, int at, out string? label)
    {
        label = null;
        if (IsInsideWord(text, at))
        {
            return 0;
        }

        foreach (var length in _lengths)
        {
            if (at + length <= text.Length
                && !IsInsideWord(text, at + length)
                && _lookup.TryGetValue(text.AsSpan(at, length), out label))
            {
                return length;
            }
        }

        return 0;
    }

    // An underline parts words here: an own column may be called "dov_score".
    private static bool IsInsideWord(string text, int at) =>
        at > 0 && at < text.Length && char.IsLetterOrDigit(text[at - 1]) && char.IsLetterOrDigit(text[at]);
}
