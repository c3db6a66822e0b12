namespace BakeInsights;

/// <summary>
/// How well a journal bears an answer out: a scale of our own, described in docs/findings.md. The two upper steps are
/// findings.
/// </summary>
public enum Strength
{
    /// <summary>The interval reaches both ways: the journal can't tell.</summary>
    Open,

    /// <summary>
    /// Asked alone it would stand, but with this many questions asked chance may have done it, or it hangs on a few odd
    /// bakes, or on causes that moved together.
    /// </summary>
    Hint,

    /// <summary>It stands with all the questions counted, and without the odd bakes.</summary>
    BorneOut,

    /// <summary>Borne out by many bakes, with a family p value far below what chance gives.</summary>
    Firm,
}
