namespace BakeInsights;

/// <summary>Ways to say how much faster a dough rises when it is warmer.</summary>
/// <remarks>
/// All describe one straight line of ln(time) against temperature, so they hold only as far as that line does: for
/// dough below about 32 °C (common practice; gassing slackens above 38 °C, and yeast grows best near 32 °C).
/// </remarks>
public static class TemperatureCoefficient
{
    /// <summary>The warmest dough, in °C, that the straight line is used for (common practice, no source).</summary>
    public const double WarmestC = 32;

    /// <summary>Percent by which the time changes for each °C, from the slope of ln(time): -0.0953 is -9.1 %.</summary>
    public static double TimeChangePctPerDegree(double lnTimeSlope) => 100 * (Math.Exp(lnTimeSlope) - 1);

    /// <summary>Percent by which the rate changes for each °C, from the slope of ln(time): -0.0953 is +10 %.</summary>
    public static double RateChangePctPerDegree(double lnTimeSlope) => 100 * (Math.Exp(-lnTimeSlope) - 1);

    /// <summary>Q10: how many times as fast the dough rises when it is 10 °C warmer, from the slope of ln(time).</summary>
    public static double Q10(double lnTimeSlope) => Math.Exp(-10 * lnTimeSlope);

    /// <summary>The slope of ln(time) that a change of the rate by this many percent a °C stands for.</summary>
    public static double LnTimeSlope(double rateChangePctPerDegree) => -Math.Log(1 + (rateChangePctPerDegree / 100));

    /// <summary>The time a dough needs at another temperature, when it needs <paramref name="minutes"/> at one.</summary>
    public static double TimeAt(double minutes, double fromC, double toC, double lnTimeSlope) =>
        minutes * Math.Exp(lnTimeSlope * (toC - fromC));
}
