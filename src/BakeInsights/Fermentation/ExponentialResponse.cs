namespace BakeInsights;

/// <summary>The same percentage faster with every degree: the trade's way, and Q10 in other words.</summary>
public sealed record ExponentialResponse : TemperatureResponse
{
    private ExponentialResponse(double lnTimeSlope, Temperature coldest, Temperature warmest, string purpose)
        : base(coldest, warmest, purpose) => LnTimeSlope = lnTimeSlope;

    /// <summary>
    /// A dough's rise, 10 % faster with each °C (trade article, "The science of fermentation"). From 20 °C, the coldest
    /// dough usually met in a kitchen (common practice), to <see cref="TemperatureCoefficient.WarmestC"/>. A rule table
    /// for sourdough yeast (Gaenzle) gives a Q10 of 2.4 to 2.7 by itself, where this is 2.6.
    /// </summary>
    public static ExponentialResponse Trade { get; } = OfPercentPerDegree(
        10,
        Temperature.FromC(20),
        Temperature.FromC(TemperatureCoefficient.WarmestC),
        "rise time of a dough, by the dough's own temperature (trade article, \"The science of fermentation\")");

    /// <summary>The slope of ln(time), for each °C.</summary>
    public double LnTimeSlope { get; }

    /// <summary>A response by the percentage that a °C adds to the rate.</summary>
    public static ExponentialResponse OfPercentPerDegree(
        double percent, Temperature coldest, Temperature warmest, string purpose) =>
        OfSlope(TemperatureCoefficient.LnTimeSlope(percent), coldest, warmest, purpose);

    /// <summary>A response by how many times the rate grows over 10 °C.</summary>
    public static ExponentialResponse OfQ10(double q10, Temperature coldest, Temperature warmest, string purpose) =>
        OfSlope(TemperatureCoefficient.LnTimeSlopeOfQ10(q10), coldest, warmest, purpose);

    /// <summary>A response by the slope of ln(time) that a regression gave.</summary>
    public static ExponentialResponse OfSlope(
        double lnTimeSlope, Temperature coldest, Temperature warmest, string purpose) =>
        new(lnTimeSlope, coldest, warmest, purpose);

    /// <summary>The rate, 1 at 0 °C.</summary>
    public override double Rate(Temperature temperature) => Math.Exp(-LnTimeSlope * temperature.C);
}
