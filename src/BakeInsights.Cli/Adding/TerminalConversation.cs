namespace BakeInsights.Cli;

/// <summary>The person at the terminal.</summary>
/// <param name="stop">Ends a question that waits for its answer.</param>
internal sealed class TerminalConversation(CancellationToken stop) : IConversation
{
    /// <summary>Whether somebody is there to answer.</summary>
    public static bool IsThere => !Console.IsInputRedirected && !Console.IsOutputRedirected;

    /// <inheritdoc/>
    public void Say(string text) => Console.Out.Write(text);

    /// <inheritdoc/>
    public string? Ask(string prompt)
    {
        Console.Out.Write(prompt);

        // A line is read on a thread of its own: reading can't be stopped, but waiting for it can.
        var line = Task.Run(Console.In.ReadLine, stop);
        try
        {
            line.Wait(stop);
            return line.Result;
        }
        catch (OperationCanceledException)
        {
            Console.Out.WriteLine();
            throw;
        }
    }
}
