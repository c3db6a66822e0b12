namespace BakeInsights.Inference;

/// <summary>Whether the estimated variances between groups lie at the edge of what is possible.</summary>
public enum MixedBoundary
{
    /// <summary>All variances are above zero, and the correlation is between -1 and 1.</summary>
    Inside,

    /// <summary>
    /// A combination of intercept and slope has no variance: one of the two variances is 0, or the correlation is -1 or
    /// 1.
    /// </summary>
    OneDirectionOnly,

    /// <summary>Nothing varies between groups beyond what chance within them explains.</summary>
    NoVariance,
}
