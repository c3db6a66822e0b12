using System.ComponentModel;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights check</c> is asked.</summary>
internal sealed class CheckSettings : JournalSettings
{
    [CommandOption("--to <FILE>")]
    [Description("Write the bakes that were kept to a new CSV file, in canonical columns and metric units.")]
    public string? To { get; init; }
}

/// <summary><c>bakeinsights check</c>: says what was read of a journal, what was set aside, and why.</summary>
internal sealed class CheckCommand : Command<CheckSettings>
{
    private const string Extension = ".csv";

    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        var journal = settings.Journal();
        if (settings.To is { } target)
        {
            RequireNew(target);
            WholeFile.Write(target, writer => CanonicalCsv.Write(writer, journal.Bakes));
        }

        Console.Out.Write(settings.Json ? JsonText.Write(new CheckJson(JournalJson.From(journal))) + "\n" : JournalView.Of(journal).ToText());
        return JournalSettings.ExitCodeFor(journal);
    }

    private static void RequireNew(string target)
    {
        if (!Path.GetExtension(target).Equals(Extension, StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandFailure($"{target} can't be written: give a name that ends in {Extension}.");
        }

        if (File.Exists(target))
        {
            throw new CommandFailure($"{target} is there already, and nothing is overwritten: give another name with --to.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(target))!;
        if (!Directory.Exists(folder))
        {
            throw new CommandFailure($"There is no folder {folder}: make it, or give another name with --to.");
        }
    }
}
