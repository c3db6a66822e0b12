namespace BakeInsights.Inference;

/// <summary>What judges have to share to be said to agree.</summary>
public enum AgreementKind
{
    /// <summary>
    /// The ratings themselves, each thing having judges of its own: case 1 of Shrout and Fleiss (1979).
    /// </summary>
    OneWay,

    /// <summary>
    /// The ratings themselves, by the same judges throughout, drawn from many: case 2 of Shrout and Fleiss (1979),
    /// absolute agreement of McGraw and Wong (1996).
    /// </summary>
    Absolute,

    /// <summary>
    /// The distances between things, a judge who is stricter throughout being no disagreement: case 3 of Shrout and
    /// Fleiss (1979), consistency of McGraw and Wong (1996).
    /// </summary>
    Consistency,
}
