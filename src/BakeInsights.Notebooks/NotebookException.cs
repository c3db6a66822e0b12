namespace BakeInsights.Notebooks;

/// <summary>
/// A notebook can't be run at all: unreadable, or without the settings that were asked for. The message gives the
/// reason and what to do, in one line. A cell that fails is not such a case; see <see cref="NotebookRun.Failure"/>.
/// </summary>
public sealed class NotebookException : Exception
{
    /// <summary>Creates the exception.</summary>
    /// <param name="message">The reason and what to do, in one line.</param>
    /// <param name="inner">What was caught, if anything.</param>
    public NotebookException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }
}
