namespace BakeInsights.Inference;

/// <summary>What a fitted parabola has at its vertex.</summary>
public enum VertexKind
{
    /// <summary>The parabola bends down.</summary>
    Maximum,

    /// <summary>The parabola bends up.</summary>
    Minimum,
}
