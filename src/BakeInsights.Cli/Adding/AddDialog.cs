using BakeInsights.Reports;

namespace BakeInsights.Cli;

/// <summary>Asks for a bake field by field, shows what was understood, and asks whether to add it.</summary>
internal sealed class AddDialog
{
    private const string Empty = "-";

    private readonly IConversation _talk;
    private readonly BakeForm _form;
    private readonly UnitSystem? _units;
    private readonly DateOnly _today;
    private readonly BakeField? _day;

    /// <summary>Prepares the questions.</summary>
    /// <param name="talk">Who is asked.</param>
    /// <param name="form">What the journal asks.</param>
    /// <param name="units">The units that the baker thinks in; null for the file's own.</param>
    /// <param name="today">The day that is offered.</param>
    public AddDialog(IConversation talk, BakeForm form, UnitSystem? units, DateOnly today)
    {
        _talk = talk;
        _form = form;
        _units = units;
        _today = today;
        _day = form.Fields.FirstOrDefault(field => field.Column == BakeColumns.BakedOn);
    }

    /// <summary>Asks until the bake is added, or is not wanted.</summary>
    /// <param name="append">Adds the bake to the journal.</param>
    /// <returns>The bake as it stands in the journal; null when it was not wanted.</returns>
    /// <exception cref="OperationCanceledException">There were no more answers.</exception>
    public Bake? Run(Func<BakeEntry, Bake> append)
    {
        Paragraph($"A bake for {Path.GetFileName(_form.File)}. Enter takes what stands in [ ], {Empty} leaves a field empty. "
            + "A cell may carry its own unit (76F, 19 oz). Nothing is written before you say yes.");
        var entry = _form.Fields.Aggregate(BakeEntry.Of(_form), Fill);
        while (true)
        {
            var reading = entry.Read();
            if (reading.Objection is { } objection)
            {
                Paragraph(EntryView.Remark(objection));
                entry = Fill(entry, FieldOf(objection) ?? _form.Fields[0]);
                continue;
            }

            _talk.Say("\n" + EntryView.Of(entry, reading, _units ?? UnitSystem.Metric).ToText() + "\n");
            switch (Answer("Add it? yes, no, or the name of a field to change > ").ToLowerInvariant())
            {
                case "yes" or "y":
                    if (Tried(append, entry) is { } bake)
                    {
                        return bake;
                    }

                    break;
                case "no" or "n":
                    return null;
                case var name when _form.Find(name) is { } found:
                    entry = Fill(entry, found.Field);
                    break;
                case var name:
                    Paragraph($"There is no field {name}: {NearestNames.List(name, _form.Fields.Select(field => field.Name))}.");
                    break;
            }
        }
    }

    private Bake? Tried(Func<BakeEntry, Bake> append, BakeEntry entry)
    {
        try
        {
            return append(entry);
        }
        catch (JournalFileException refused)
        {
            Paragraph($"{refused.Reason} {refused.Remedy}");
            return null;
        }
    }

    private BakeEntry Fill(BakeEntry entry, BakeField field)
    {
        var question = FieldQuestion.Of(_form, field, _units, _today);
        _talk.Say(question.Text);
        while (true)
        {
            var answer = Answer(question.Prompt(_form.Last));
            var filled = Filled(entry, question, answer);
            var objection = filled is null ? "A cell holds one line of text." : Objection(filled, field, answer);
            if (objection is null)
            {
                return filled!;
            }

            Paragraph(objection);
        }
    }

    private BakeEntry? Filled(BakeEntry entry, FieldQuestion question, string answer)
    {
        try
        {
            return answer switch
            {
                "" when question.Offered is { } offered => entry.With(question.Field, offered, question.Field.Unit),
                Empty => entry.With(question.Field, "", null),
                _ => entry.With(question.Field, answer, question.Asked),
            };
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    // Without a day the row would be set aside unread, so a day stands in until it has its own.
    private string? Objection(BakeEntry entry, BakeField field, string answer)
    {
        var isUnread = field != _day && _day is not null && entry[_day].Length == 0;
        var reading = (isUnread ? entry.With(_day!, FieldQuestion.Of(_form, _day!, _units, _today).Offered!, null) : entry).Read();
        if (reading.Notices.FirstOrDefault(notice => notice.Gravity >= Gravity.Unread && FieldOf(notice) == field) is { } notice)
        {
            return EntryView.Remark(notice with { Text = answer });
        }

        return field.Column == BakeColumns.Id && entry.Id.Length > 0 && _form.HolderOf(entry.Id) is { } holder
            ? FormattableString.Invariant($"The bake_id {entry.Id} is already that of {holder.File}, line {holder.Line}. Give another, or none.")
            : null;
    }

    private BakeField? FieldOf(Notice notice) =>
        _form.Fields.FirstOrDefault(field => field.Name == notice.Column || field.Column?.Name == notice.Column);

    private string Answer(string prompt) => _talk.Ask(prompt)?.Trim() ?? throw new OperationCanceledException();

    private void Paragraph(string text) => _talk.Say(new View([new ViewParagraph(text)]).ToText());
}
