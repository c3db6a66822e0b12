using System.Collections.Immutable;
using System.Text;

namespace BakeInsights;

/// <summary>A bake that is about to be added: what was filled in so far. Immutable.</summary>
public sealed class BakeEntry
{
    private readonly ImmutableDictionary<string, string> _cells;

    private BakeEntry(BakeForm form, ImmutableDictionary<string, string> cells)
    {
        Form = form;
        _cells = cells;
    }

    /// <summary>What is asked.</summary>
    public BakeForm Form { get; }

    /// <summary>The name that was filled in; empty when none was.</summary>
    public string Id => Form.Fields.FirstOrDefault(each => each.Column == BakeColumns.Id) is { } id
        ? CellText.Unmarked(this[id])
        : "";

    /// <summary>What the file gets in a column; empty when nothing was filled in.</summary>
    public string this[BakeField field] => _cells.GetValueOrDefault(field.Name, "");

    /// <summary>A bake of which nothing is filled in.</summary>
    public static BakeEntry Of(BakeForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new BakeEntry(form, ImmutableDictionary<string, string>.Empty);
    }

    /// <summary>The bake with one more field filled in, or emptied.</summary>
    /// <param name="field">The field.</param>
    /// <param name="typed">What was typed; empty or blank to leave the field empty.</param>
    /// <param name="asked">The unit that a bare number is in; null when there is none.</param>
    /// <exception cref="ArgumentException">No cell can hold the text: it has a line break in it.</exception>
    public BakeEntry With(BakeField field, string typed, MeasureUnit? asked)
    {
        ArgumentNullException.ThrowIfNull(field);
        var text = CellText.Require(typed, nameof(typed));
        return new BakeEntry(
            Form, text.Length == 0 ? _cells.Remove(field.Name) : _cells.SetItem(field.Name, field.CellOf(text, asked)));
    }

    /// <summary>What the reader makes of the bake, and what it remarks on it; the journal is not touched.</summary>
    /// <exception cref="JournalFileException">The file's encoding can't hold one of the texts.</exception>
    public BakeEntryReading Read() => TrialFile.Read(Form, LineFor(Form, Form.NextId));

    /// <summary>The bytes of the bake's line.</summary>
    internal byte[] LineFor(BakeForm form, string? nextId)
    {
        var cells = new string[form.Header.Count];
        Array.Fill(cells, "");
        foreach (var field in form.Fields)
        {
            var text = this[field];
            cells[field.Index] = field.Column == BakeColumns.Id && text.Length == 0 ? CellText.Marked(nextId ?? "") : text;
        }

        try
        {
            return form.Shape.BytesOf(cells);
        }
        catch (EncoderFallbackException failure)
        {
            throw new JournalFileException(
                form.File,
                $"Its encoding, {form.Shape.Encoding.WebName}, has no way to write '{failure.CharUnknown}'.",
                "Write the text without that character, or save the file as CSV (UTF-8) first.",
                failure);
        }
    }
}

/// <summary>What the reader makes of a bake that is about to be added.</summary>
/// <param name="Bake">The bake; null when its row would be set aside.</param>
/// <param name="Notices">The remarks on its row.</param>
public sealed record BakeEntryReading(Bake? Bake, IReadOnlyList<Notice> Notices)
{
    /// <summary>The gravest remark for which the bake should not be added as it is; null when there is none.</summary>
    public Notice? Objection => Notices.Where(notice => notice.Gravity >= Gravity.Unread).MaxBy(notice => notice.Gravity);
}
