namespace BakeInsights;

/// <summary>What the rows of a journal's file are. All but the bakes are optional, and named for their kind: loaves.csv.</summary>
public enum JournalFileKind
{
    /// <summary>Doughs, from mixing to cooling.</summary>
    Bakes,

    /// <summary>Loaves.</summary>
    Loaves,

    /// <summary>Attributes that judges score.</summary>
    Attributes,

    /// <summary>Scores of judges.</summary>
    Scores,

    /// <summary>Readings of rising doughs.</summary>
    Rise,

    /// <summary>Readings of temperatures.</summary>
    Probe,

    /// <summary>Weighed cups.</summary>
    Cups,

    /// <summary>Ingredients of formulas.</summary>
    Formulas,
}
