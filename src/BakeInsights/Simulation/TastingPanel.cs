using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>Who judges the virtual kitchen's loaves and what they see. All figures are our own choice.</summary>
/// <remarks>
/// Each judge has a scale of their own: some sit higher, some spread further. A score is
/// middle + shift + stretch x (what the loaf is like - middle) + error, rounded and kept on the scale.
/// </remarks>
public sealed record TastingPanel
{
    /// <summary>The judges, who score the first loaf of every bake; none by default.</summary>
    public ImmutableArray<string> Judges { get; init; } = [];

    /// <summary>Standard deviation between judges of where they sit, in points.</summary>
    public double ShiftSd { get; init; } = 0.8;

    /// <summary>Standard deviation between judges of ln(stretch).</summary>
    public double StretchSd { get; init; } = 0.25;

    /// <summary>Standard deviation of one score, in points.</summary>
    public double ErrorSd { get; init; } = 0.8;

    /// <summary>Points of crumb for each mL/g of loaf.</summary>
    public double CrumbPerVolume { get; init; } = 3;

    /// <summary>Points of openness for each percent of hydration.</summary>
    public double OpennessPerHydration { get; init; } = 0.15;

    /// <summary>Points of openness for each unit of ln(proof given / needed).</summary>
    public double OpennessPerLogProof { get; init; } = 3;

    /// <summary>Points of flavour for each unit of ln(rise minutes).</summary>
    public double FlavourPerLogRise { get; init; } = 2;
}
