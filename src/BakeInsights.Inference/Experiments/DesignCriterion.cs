namespace BakeInsights.Inference;

/// <summary>What an optimal design makes best.</summary>
public enum DesignCriterion
{
    /// <summary>
    /// The largest determinant of X'X: the smallest joint confidence region of the coefficients. Fedorov (1972), Theory
    /// of Optimal Experiments.
    /// </summary>
    Determinant,

    /// <summary>
    /// The smallest variance of predictions, on average over the candidates or over given aims. Atkinson, Donev and Tobias (2007), Optimum
    /// Experimental Designs, with SAS, section 10.6.
    /// </summary>
    AveragePrediction,
}
