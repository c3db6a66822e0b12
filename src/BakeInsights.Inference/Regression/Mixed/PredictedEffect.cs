namespace BakeInsights.Inference;

/// <summary>A predicted departure of a group from the whole, shrunk towards 0 as far as its data are few.</summary>
/// <remarks>
/// Best linear unbiased prediction: Henderson (1975), Biometrics 31, 423-447. The standard error counts that the
/// model's coefficients are estimated too; the degrees of freedom are Satterthwaite's for it.
/// </remarks>
/// <param name="Value">The prediction, 0 where the variance is estimated as 0.</param>
/// <param name="ConditionalDeviation">The standard deviation if coefficients and variances were known.</param>
/// <param name="StandardError">
/// The standard error of prediction; null where the variance is estimated as 0, for then nothing is known of it.
/// </param>
/// <param name="DegreesOfFreedom">The degrees of freedom of the standard error; null with it.</param>
public sealed record PredictedEffect(
    double Value, double ConditionalDeviation, double? StandardError, double? DegreesOfFreedom)
{
    /// <summary>The interval of the true departure from Student's t; null without a standard error.</summary>
    /// <param name="level">The probability, between 0 and 1, such as 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public Interval? Interval(double level) => StandardError is { } error && DegreesOfFreedom is { } df
        ? Inference.Interval.Around(Value, Tails.StudentQuantile(level, df) * error)
        : null;
}
