using BakeInsights.Notebooks;

namespace BakeInsights.Cli;

/// <summary>A command can't be done, for a reason that its user can act on.</summary>
/// <param name="message">The reason and what to do, in one line.</param>
internal sealed class CommandFailure(string message) : Exception(message)
{
    /// <summary>Whatever ended a command early, as one line and an exit code.</summary>
    /// <param name="error">What ended it.</param>
    /// <param name="errors">Standard error.</param>
    public static int Report(Exception error, TextWriter errors)
    {
        var message = error switch
        {
            CommandFailure or NotebookException or JournalFileException => error.Message,
            OperationCanceledException => "Stopped before the end; nothing was written.",
            UnauthorizedAccessException or IOException => $"{error.Message.TrimEnd('.')}. Choose another place, or free this one.",
            Spectre.Console.Cli.CommandAppException => $"{error.Message} See bakeinsights --help.",
            _ => $"This should not happen ({error.GetType().Name}: {error.Message}). Please report it.",
        };
        errors.WriteLine(OneLine(message));
        return ExitCode.Failed;
    }

    private static string OneLine(string text) =>
        string.Join(' ', text.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
