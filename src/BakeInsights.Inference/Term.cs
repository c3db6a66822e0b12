namespace BakeInsights.Inference;

/// <summary>An estimated quantity with its uncertainty: a coefficient, or a combination of coefficients.</summary>
/// <param name="Name">The name of the quantity.</param>
/// <param name="Estimate">The estimate.</param>
/// <param name="StandardError">The standard error of the estimate, in the same unit; 0 for a perfect fit.</param>
/// <param name="DegreesOfFreedom">
/// The degrees of freedom of the standard error; infinite where the method knows only the normal of large samples.
/// </param>
public sealed record Term(string Name, double Estimate, double StandardError, double DegreesOfFreedom)
{
    /// <summary>
    /// Estimate over standard error; null if the standard error is 0, where the ratio has no finite value.
    /// </summary>
    public double? TValue => StandardError > 0 ? Estimate / StandardError : null;

    /// <summary>
    /// The two-sided p value against zero, from Student's t; null if the standard error is 0, as the t value is.
    /// </summary>
    public double? PValue => TValue is { } t ? Tails.StudentTwoSided(t, DegreesOfFreedom) : null;

    /// <summary>The confidence interval from Student's t; a single point if the standard error is 0.</summary>
    /// <param name="level">The confidence level, between 0 and 1, such as 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval Interval(double level) =>
        Inference.Interval.Around(Estimate, Tails.StudentQuantile(level, DegreesOfFreedom) * StandardError);
}
