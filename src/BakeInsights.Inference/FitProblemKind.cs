namespace BakeInsights.Inference;

/// <summary>The kinds of <see cref="FitProblem"/>.</summary>
public enum FitProblemKind
{
    /// <summary>No row is left over to estimate the residual spread from.</summary>
    TooFewRows,

    /// <summary>A column is, to rounding, a linear combination of those before it.</summary>
    DependentColumn,

    /// <summary>A value is NaN or infinite.</summary>
    MissingValue,

    /// <summary>A value is so large or so small that its square leaves the range of double precision.</summary>
    OutOfRange,

    /// <summary>The response doesn't vary, so there is nothing to explain.</summary>
    NoSpread,

    /// <summary>The second-order coefficient is exactly zero, so a curve has no vertex.</summary>
    NoCurvature,

    /// <summary>A value that its method has no place for, such as a time below zero.</summary>
    ImpossibleValue,

    /// <summary>The model meets every row, so that no spread is left to measure uncertainty with.</summary>
    ZeroSpread,

    /// <summary>Columns tell outcomes apart without error, so that their effects have no finite estimate.</summary>
    Separation,

    /// <summary>There are too few groups, or too few rows in each, to tell groups from rows.</summary>
    TooFewGroups,

    /// <summary>The search for the best fit came to no end, or ended where a parameter isn't determined.</summary>
    NoConvergence,
}
