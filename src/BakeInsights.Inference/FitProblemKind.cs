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

    /// <summary>There are too few groups, or the columns leave too few, to tell a spread between groups.</summary>
    TooFewGroups,

    /// <summary>A search for the best fit didn't come to rest.</summary>
    NoConvergence,
}
