namespace BakeInsights.Inference;

/// <summary>How much a disagreement counts by the distance of the two categories.</summary>
public enum KappaWeighting
{
    /// <summary>
    /// Every disagreement counts alike: Cohen (1960), Educational and Psychological Measurement 20, 37-46.
    /// </summary>
    None,

    /// <summary>A disagreement counts by its distance: Cohen (1968), Psychological Bulletin 70, 213-220.</summary>
    Linear,

    /// <summary>A disagreement counts by its squared distance.</summary>
    Quadratic,
}
