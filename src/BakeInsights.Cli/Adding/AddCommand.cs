using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights add</c>: one more bake, asked for or given, checked, and added whole or not at all.</summary>
internal sealed class AddCommand : Command<AddSettings>
{
    public override int Execute(CommandContext context, AddSettings settings, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(settings.JournalPath))
        {
            throw new CommandFailure("The journal's name is blank: give a folder, or a CSV file of bakes.");
        }

        var units = settings.UnitSystem();
        var form = BakeForm.Open(settings.JournalPath);
        var bake = settings.Set.Length > 0
            ? Given(settings.Entry(form), units, cancellationToken)
            : Asked(form, units, cancellationToken);
        Console.Out.WriteLine(bake is null
            ? "Nothing was added."
            : FormattableString.Invariant($"Added {bake.Id} to {form.File}, line {bake.Origin.Line}."));
        return ExitCode.Done;
    }

    private static Bake Given(BakeEntry entry, UnitSystem? units, CancellationToken stop)
    {
        var reading = entry.Read();
        if (reading.Objection is { } objection)
        {
            throw new CommandFailure($"{EntryView.Remark(objection)} Nothing was added.");
        }

        var bake = BakeAppender.Append(entry, stop);
        Console.Out.Write(EntryView.Of(entry, reading with { Bake = bake }, units ?? UnitSystem.Metric).ToText() + "\n");
        return bake;
    }

    private static Bake? Asked(BakeForm form, UnitSystem? units, CancellationToken stop)
    {
        if (!TerminalConversation.IsThere)
        {
            throw new CommandFailure("Questions need a terminal, and this is none: give each field with --set field=value.");
        }

        var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        return new AddDialog(new TerminalConversation(stop), form, units, today).Run(entry => BakeAppender.Append(entry, stop));
    }
}
