namespace BakeInsights;

/// <summary>What a dent pressed into the dough did, from too early to too late.</summary>
public enum PressTest
{
    /// <summary>It sprang back at once.</summary>
    SpringsBack,

    /// <summary>It came back slowly and left a slight dent.</summary>
    SlowReturn,

    /// <summary>It stayed.</summary>
    KeepsDent,

    /// <summary>The dough sank around it.</summary>
    Collapses,
}
