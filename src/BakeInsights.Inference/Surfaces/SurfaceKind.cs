namespace BakeInsights.Inference;

/// <summary>What a second-order surface has at its stationary point.</summary>
public enum SurfaceKind
{
    /// <summary>It falls off in every direction.</summary>
    Maximum,

    /// <summary>It rises in every direction.</summary>
    Minimum,

    /// <summary>It rises in some directions and falls in others.</summary>
    Saddle,

    /// <summary>In some direction it is level, as far as can be told, so that there is a line of best points.</summary>
    Ridge,
}
