namespace BakeInsights.Inference;

/// <summary>
/// Constants of the range of two normal values, exact: Montgomery (2013), Introduction to Statistical Quality Control,
/// 7th ed., appendix VI prints them as 1.128, 0.853 and 3.267.
/// </summary>
internal static class ControlConstants
{
    /// <summary>Control limits lie this many standard deviations from the centre: Shewhart (1931).</summary>
    public const double Width = 3;

    /// <summary>The mean of the range over the standard deviation, 2 over the root of pi.</summary>
    public static readonly double MeanRange = 2 / Math.Sqrt(Math.PI);

    /// <summary>The upper limit of the range over its mean; the range's variance is 2 - 4 / pi.</summary>
    public static readonly double RangeLimit = 1 + (Width * Math.Sqrt(2 - (4 / Math.PI)) / MeanRange);
}
