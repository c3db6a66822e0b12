namespace BakeInsights;

/// <summary>What a comparison of two ways says of one result.</summary>
public enum Likeness
{
    /// <summary>The journal can say neither that they differ nor that they are alike.</summary>
    Unknown,

    /// <summary>They differ, by how much is open: the 95 % interval leaves out nothing at all, the 90 % interval passes the margin.</summary>
    Different,

    /// <summary>They differ, but by less than the margin.</summary>
    DifferentWithinMargin,

    /// <summary>They are alike within the margin: the 90 % interval lies inside it.</summary>
    Alike,
}
