namespace BakeInsights;

/// <summary>
/// One curve fitted to the readings of a rising dough. Intervals are 95 % profile intervals; an end that the readings
/// don't bound is null.
/// </summary>
/// <param name="Curve">The fitted curve. Its rise counts from <paramref name="StartSize"/>: 1 is doubled.</param>
/// <param name="StartSize">
/// The size that the curve starts from, in the unit of the readings. It is estimated with the curve: the first reading
/// errs as much as any other, and every multiple would carry its error.
/// </param>
/// <param name="Lag">Minutes until the steepest tangent leaves the start.</param>
/// <param name="Steepest">The steepest rise, in starting sizes for each minute.</param>
/// <param name="Ceiling">The size that the curve tends to, in starting sizes: 2 is doubled.</param>
/// <param name="Doubling">
/// Minutes until twice the starting size; null where the ceiling does not reach it. Its upper end is null where a
/// ceiling below doubled lies within the ceiling's interval: the dough may never double.
/// </param>
/// <param name="NoDoubling">Why there is no time to double; null where there is one.</param>
/// <param name="Scatter">
/// The standard deviation of the readings about the curve, in starting sizes.
/// </param>
/// <param name="Aicc">
/// Akaike's criterion with the correction for few readings, of sizes counted in first readings; only differences mean
/// anything, less is better.
/// </param>
public sealed record RiseCurveFit(
    RiseCurve Curve,
    double StartSize,
    Estimate Lag,
    Estimate Steepest,
    Estimate Ceiling,
    Estimate? Doubling,
    string? NoDoubling,
    double Scatter,
    double Aicc)
{
    /// <summary>The expansion after so many minutes: size / starting size.</summary>
    public double Expansion(double minutes) => 1 + Curve.Rise(minutes);
}
