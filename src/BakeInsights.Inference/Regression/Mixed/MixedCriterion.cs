namespace BakeInsights.Inference;

/// <summary>What a mixed model maximizes.</summary>
public enum MixedCriterion
{
    /// <summary>
    /// The likelihood of what the columns leave over, so that variances don't shrink with the number of columns:
    /// Patterson and Thompson (1971), Biometrika 58, 545-554. Take this one for variances and intervals.
    /// </summary>
    Restricted,

    /// <summary>
    /// The likelihood of the response itself. Take this one to compare models that differ in columns.
    /// </summary>
    Full,
}
