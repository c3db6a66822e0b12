namespace BakeInsights.Cli;

/// <summary>One line on the terminal that long work rewrites as it goes on; nothing at all in a pipe.</summary>
internal sealed class ProgressLine : IDisposable
{
    private const string Rewrite = "\r\u001b[K";

    // Taken once: a notebook's cells have their own standard error while they run.
    private readonly TextWriter? _terminal = Console.IsErrorRedirected ? null : Console.Error;

    /// <summary>Shows how far the work has come.</summary>
    public void Show(string text)
    {
        if (_terminal is null)
        {
            return;
        }

        var width = Math.Max(20, Console.WindowWidth - 1);
        _terminal.Write(Rewrite + (text.Length > width ? text[..width] : text));
    }

    /// <summary>Leaves the line empty for what comes next.</summary>
    public void Dispose() => _terminal?.Write(Rewrite);
}
