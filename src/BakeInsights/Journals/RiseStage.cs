namespace BakeInsights;

/// <summary>Which of a bake's rises a reading is of.</summary>
public enum RiseStage
{
    /// <summary>The dough that was fermented ahead.</summary>
    Preferment,

    /// <summary>The first rise, in bulk.</summary>
    Rise,

    /// <summary>The proof of the shaped pieces.</summary>
    Proof,
}
