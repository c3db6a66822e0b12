namespace BakeInsights;

/// <summary>Which two ways of baking are compared.</summary>
/// <param name="Column">The column that tells them apart, such as <c>formula</c>; any column of the journal.</param>
/// <param name="First">What the column says of the first way; letter case doesn't matter.</param>
/// <param name="Second">What it says of the second.</param>
public sealed record WaysWish(string Column, string First, string Second)
{
    /// <summary>Where nothing else is said: a tenth of a rise or of a volume, which a kitchen would hardly act on. Our own choice.</summary>
    public const double UsualMarginPct = 10;

    private readonly double _marginPct = UsualMarginPct;

    /// <summary>How much a result may differ for two ways to count as alike, in percent of the first way's, from 0 to 100, both left out.</summary>
    public double MarginPct
    {
        get => _marginPct;
        init => _marginPct = value is > 0 and < 100
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A margin is a percentage above 0 and below 100.");
    }
}
