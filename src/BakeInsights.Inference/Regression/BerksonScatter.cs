namespace BakeInsights.Inference;

/// <summary>What settings that are met with an error add to a fit's residual spread.</summary>
/// <param name="Slope">The slope on the settings, which needs no correction.</param>
/// <param name="ResidualDeviation">
/// The residual standard deviation of the fit, in the response's unit. A run at a setting scatters by this much, the
/// error of meeting the setting included.
/// </param>
/// <param name="CarriedDeviation">The part that comes from the error: the slope's size times the error's
/// deviation.</param>
/// <param name="DeviationWithoutError">
/// What would be left if settings were met exactly; null if the error would explain more than all of the spread.
/// </param>
public sealed record BerksonScatter(
    Term Slope, double ResidualDeviation, double CarriedDeviation, double? DeviationWithoutError);
