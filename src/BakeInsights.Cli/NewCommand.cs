using System.ComponentModel;
using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights new</c> is asked.</summary>
internal sealed class NewSettings : CommandSettings
{
    [CommandArgument(0, "<folder>")]
    [Description("The folder of the new journal; made if it is not there.")]
    public required string Folder { get; init; }
}

/// <summary><c>bakeinsights new</c>: a journal to start from.</summary>
internal sealed class NewCommand : Command<NewSettings>
{
    public override int Execute(CommandContext context, NewSettings settings, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(settings.Folder))
        {
            throw new CommandFailure("The folder's name is blank: give one to make the journal in.");
        }

        var files = StarterJournal.Files;
        var there = files.Select(file => Path.Combine(settings.Folder, file.Name)).FirstOrDefault(File.Exists);
        if (there is not null)
        {
            throw new CommandFailure($"{there} is there already, and nothing is overwritten: choose another folder.");
        }

        Directory.CreateDirectory(settings.Folder);
        foreach (var file in files)
        {
            WholeFile.Write(Path.Combine(settings.Folder, file.Name), writer => writer.Write(file.Text));
        }

        Console.Out.WriteLine(
            $"{settings.Folder} is a new journal. Write a line for each bake in {Path.Combine(settings.Folder, StarterJournal.BakesFile)}, "
            + $"then run: bakeinsights check {settings.Folder}");
        return ExitCode.Done;
    }
}
