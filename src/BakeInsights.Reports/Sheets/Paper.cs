namespace BakeInsights.Reports;

/// <summary>The paper that sheets are printed on.</summary>
public enum Paper
{
    /// <summary>210 x 297 mm.</summary>
    A4,

    /// <summary>8.5 x 11 inches.</summary>
    Letter,
}
