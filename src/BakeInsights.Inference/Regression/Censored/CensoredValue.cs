namespace BakeInsights.Inference;

/// <summary>A positive quantity, such as a time, of which only bounds may be known.</summary>
/// <remarks>A NaN in place of a bound is taken as missing, and refused by the fit.</remarks>
public readonly record struct CensoredValue
{
    private CensoredValue(double? low, double? high) => (Low, High) = (low, high);

    /// <summary>The value is at least this; null if it is only known to be below <see cref="High"/>.</summary>
    public double? Low { get; }

    /// <summary>The value is at most this; null if it is only known to be above <see cref="Low"/>.</summary>
    public double? High { get; }

    /// <summary>Whether the value itself is known.</summary>
    public bool IsExact => Low is { } low && low == High;

    /// <summary>The value is known.</summary>
    public static CensoredValue Exact(double value) => new(value, value);

    /// <summary>The value lies between two looks, that is, it is interval-censored.</summary>
    public static CensoredValue Between(double low, double high) => new(low, high);

    /// <summary>The value lies above the last look, that is, it is right-censored.</summary>
    public static CensoredValue Above(double low) => new(low, null);

    /// <summary>The value lies below the first look, that is, it is left-censored.</summary>
    public static CensoredValue Below(double high) => new(null, high);
}
