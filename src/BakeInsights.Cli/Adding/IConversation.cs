namespace BakeInsights.Cli;

/// <summary>Somebody who can be told things and asked for things, one line at a time.</summary>
internal interface IConversation
{
    /// <summary>Tells something.</summary>
    void Say(string text);

    /// <summary>Asks for a line; null when there are no more answers.</summary>
    /// <param name="prompt">What stands before the answer.</param>
    string? Ask(string prompt);
}
