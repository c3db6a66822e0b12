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

    /// <summary>Reads the journal.</summary>
    /// <exception cref="CommandFailure">Its name is blank.</exception>
    /// <exception cref="JournalFileException">It can't be read at all.</exception>
    public Journal Journal() => string.IsNullOrWhiteSpace(JournalPath)
        ? throw new CommandFailure("The journal's name is blank: give a folder, or a CSV file of bakes.")
        : BakeInsights.Journal.Read(JournalPath);

    /// <summary>What a command ends with after it has read the journal.</summary>
    public static int ExitCodeFor(Journal journal) => journal.SetAside > 0 ? ExitCode.RowsSetAside : ExitCode.Done;
}
