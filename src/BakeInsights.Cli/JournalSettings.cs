using System.ComponentModel;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What every command that reads a journal is asked.</summary>
internal abstract class JournalSettings : CommandSettings
{
    [CommandArgument(0, "<journal>")]
    [Description("The journal: a folder with bakes*.csv in it, or one CSV file of bakes.")]
    public required string JournalPath { get; init; }

    [CommandOption("--json")]
    [Description("Print one JSON document and nothing else.")]
    public bool Json { get; init; }

    /// <summary>Where the journal is.</summary>
    /// <exception cref="CommandFailure">Its name is blank.</exception>
    public string RequirePath() => string.IsNullOrWhiteSpace(JournalPath)
        ? throw new CommandFailure("The journal's name is blank: give a folder, or a CSV file of bakes.")
        : JournalPath;

    /// <summary>What a command ends with after it has read the journal.</summary>
    public static int ExitCodeFor(JournalReading reading) => reading.SetAside > 0 ? ExitCode.RowsSetAside : ExitCode.Done;
}
