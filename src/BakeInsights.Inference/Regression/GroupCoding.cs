namespace BakeInsights.Inference;

/// <summary>How group labels become indicator columns.</summary>
public enum GroupCoding
{
    /// <summary>A column for every group but the first: coefficients are differences from the first group.</summary>
    AgainstFirst,

    /// <summary>A column for every group: coefficients are the groups' levels, and take no constant column.</summary>
    EveryGroup,
}
