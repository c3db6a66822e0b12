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

    /// <summary>The residuals are all zero, so that nothing can be held against their spread.</summary>
    NoResidualSpread,

    /// <summary>No column varies, so there is nothing that the question could be about.</summary>
    TooFewColumns,

    /// <summary>No setting is repeated, or too few are, to tell spread from a wrong shape.</summary>
    NoReplicates,

    /// <summary>An iteration doesn't settle on one answer.</summary>
    NoConvergence,

    /// <summary>A predictor's known error is as large as all its spread.</summary>
    ErrorExceedsSpread,
}
