namespace BakeInsights.Inference;

/// <summary>The estimated variances of a mixed model, in squared units of the response (and of the slope).</summary>
/// <param name="Residual">The variance of a row about its group's line.</param>
/// <param name="Intercept">The variance of the groups' intercepts, 0 at the boundary.</param>
/// <param name="Slope">The variance of the groups' slopes; null in a model without slopes.</param>
/// <param name="Covariance">The covariance of the groups' intercepts and slopes; null in a model without.</param>
public sealed record MixedVariances(double Residual, double Intercept, double? Slope, double? Covariance)
{
    /// <summary>The correlation of intercepts and slopes; null without slopes or where a variance is 0.</summary>
    public double? Correlation => Covariance is { } covariance && Slope is > 0 && Intercept > 0
        ? Math.Clamp(covariance / Math.Sqrt(Intercept * Slope.Value), -1, 1)
        : null;

    /// <summary>
    /// The share of the variance of a row that lies between groups, for a model without slopes; null with slopes, where
    /// the share changes along the slope's column.
    /// </summary>
    public double? ShareBetweenGroups => Slope is null ? Intercept / (Intercept + Residual) : null;
}
