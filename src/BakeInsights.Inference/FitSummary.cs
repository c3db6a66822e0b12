namespace BakeInsights.Inference;

/// <summary>A fit as a whole. What a method doesn't define is null.</summary>
/// <param name="Method">The method's name, as the field calls it.</param>
/// <param name="RowCount">How many rows the fit rests on.</param>
/// <param name="ResidualDegreesOfFreedom">What the rows leave over after the coefficients.</param>
/// <param name="ResidualStandardDeviation">The spread of the response about the fit, in the response's unit.</param>
/// <param name="RSquared">The share of the response's variation that the fit accounts for.</param>
/// <param name="LogLikelihood">The natural logarithm of the likelihood at its maximum, constants included.</param>
/// <param name="CorrectedAic">
/// Akaike's criterion with the small-sample correction of Hurvich and Tsai (1989), Biometrika 76, 297-307; the
/// residual variance counts as a parameter. Only fits of one response are to be compared by it.
/// </param>
public sealed record FitSummary(
    string Method,
    int RowCount,
    double? ResidualDegreesOfFreedom,
    double? ResidualStandardDeviation,
    double? RSquared,
    double? LogLikelihood,
    double? CorrectedAic);
