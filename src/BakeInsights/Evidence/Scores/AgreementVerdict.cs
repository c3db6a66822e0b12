namespace BakeInsights;

/// <summary>Whether the scores of an attribute deserve a model, by how far its judges agree. Described in docs/scores.md.</summary>
public enum AgreementVerdict
{
    /// <summary>Fewer than two judges scored the same bakes, so nobody can say; a model is made, and that is said.</summary>
    Unknown,

    /// <summary>More than half of what their mean score tells apart is the judges' own: no model is made.</summary>
    TooLittle,

    /// <summary>The judges agree well enough for a model, but the interval reaches down to too little.</summary>
    Unsettled,

    /// <summary>The whole interval lies above too little.</summary>
    Enough,
}
