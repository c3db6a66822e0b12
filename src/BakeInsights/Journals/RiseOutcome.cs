namespace BakeInsights;

/// <summary>How a rise ended.</summary>
public enum RiseOutcome
{
    /// <summary>The dough was ready at the time written down.</summary>
    Ready,

    /// <summary>The dough was not ready yet when the rise was cut short.</summary>
    Stopped,
}
