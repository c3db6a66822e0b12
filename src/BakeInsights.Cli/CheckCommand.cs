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
        var reading = Read(settings);
        Console.Out.Write(settings.Json ? JsonText.Write(new CheckJson(JournalJson.From(reading))) + "\n" : JournalView.Of(reading).ToText());
        return JournalSettings.ExitCodeFor(reading);
    }

    private static JournalReading Read(CheckSettings settings)
    {
        var path = settings.RequirePath();
        if (settings.To is not { } target)
        {
            return JournalReading.Of(path);
        }

        RequireNew(target);
        JournalReading? reading = null;
        WholeFile.Write(target, writer => reading = JournalReading.Of(path, writer));
        return reading!;
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
