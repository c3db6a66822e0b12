namespace BakeInsights;

/// <summary>How the flour was measured. By the cup, the way of filling it decides the weight.</summary>
public enum FlourMeasure
{
    /// <summary>On a scale.</summary>
    Weighed,

    /// <summary>By cup: spooned in lightly and levelled.</summary>
    Spooned,

    /// <summary>By cup: the cup dipped into the flour and levelled.</summary>
    Scooped,

    /// <summary>By cup: sifted first, then spooned in and levelled.</summary>
    Sifted,

    /// <summary>By cup, filled in a way that was not written down.</summary>
    CupUnknown,
}
