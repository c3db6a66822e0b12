namespace BakeInsights;

/// <summary>Published friction factors, to start from until a bake of one's own gives a better one.</summary>
/// <remarks>
/// They are differences: 5 °F are 2.8 °C. Sources range from 2 to 35 °F for high-speed mixers alone, so each is a first
/// guess only.
/// </remarks>
public static class FrictionFactors
{
    /// <summary>Kneading by hand (a cooking magazine's table).</summary>
    public static TemperatureDifference Hand { get; } = TemperatureDifference.FromF(5);

    /// <summary>A stand mixer (the same table).</summary>
    public static TemperatureDifference StandMixer { get; } = TemperatureDifference.FromF(20);

    /// <summary>A food processor (the same table).</summary>
    public static TemperatureDifference FoodProcessor { get; } = TemperatureDifference.FromF(25);

    /// <summary>A mixer by its minutes: 2 °F each (trade text; 8 min make 16 °F).</summary>
    public static TemperatureDifference OfMixing(double minutes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(minutes);
        return minutes * TemperatureDifference.FromF(2);
    }
}
