namespace BakeInsights;

/// <summary>Which score of an attribute is best.</summary>
public enum AttributeKind
{
    /// <summary>The highest.</summary>
    MoreIsBetter,

    /// <summary>The middle of the scale: less is too little, more too much.</summary>
    MiddleIsBest,
}
