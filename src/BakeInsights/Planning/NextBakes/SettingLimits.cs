namespace BakeInsights;

/// <summary>Between which values a baker can set something, both ends included, in the measure's canonical unit.</summary>
public readonly record struct SettingLimits
{
    /// <summary>The limits.</summary>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end, not below the lower one.</param>
    public SettingLimits(double low, double high)
    {
        if (!(double.IsFinite(low) && double.IsFinite(high) && low <= high))
        {
            throw new ArgumentOutOfRangeException(nameof(high), high, "The upper end is a finite number, not below the lower one.");
        }

        (Low, High) = (low, high);
    }

    /// <summary>The lower end.</summary>
    public double Low { get; }

    /// <summary>The upper end.</summary>
    public double High { get; }
}
