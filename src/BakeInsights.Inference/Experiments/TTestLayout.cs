namespace BakeInsights.Inference;

/// <summary>What a t test compares.</summary>
public enum TTestLayout
{
    /// <summary>The mean of one group, or of differences of pairs, with a fixed number; rows count pairs.</summary>
    OneGroup,

    /// <summary>The means of two groups of equal size; rows count those of one group.</summary>
    TwoGroups,
}
