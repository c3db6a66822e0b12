namespace BakeInsights.Inference;

/// <summary>The shapes that a confidence set of a ratio can take.</summary>
public enum RatioSetKind
{
    /// <summary>An interval with two ends.</summary>
    Bounded,

    /// <summary>All values from one end on; the denominator sits exactly at the edge of being told from zero.</summary>
    OneRay,

    /// <summary>All values but those of a gap: the denominator can't be told from zero.</summary>
    TwoRays,

    /// <summary>Every value: neither the denominator nor the numerator says anything.</summary>
    WholeLine,
}
