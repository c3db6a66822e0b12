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

    /// <summary>Q10: how many times as fast the dough rises when it is 10 °C warmer, from the slope of ln(time).</summary>
    public static double Q10(double lnTimeSlope) => Math.Exp(-10 * lnTimeSlope);

    /// <summary>The slope of ln(time) that a change of the rate by this many percent a °C stands for.</summary>
    public static double LnTimeSlope(double rateChangePctPerDegree) => -Math.Log(1 + (rateChangePctPerDegree / 100));

    /// <summary>
    /// What a rise time is multiplied by when the dough is this many °C warmer, from the slope of ln(time): 90 min at
    /// 25 °C are 90 x TimeFactor(slope, -5) min at 20 °C.
    /// </summary>
    public static double TimeFactor(double lnTimeSlope, double warmerC) => Math.Exp(lnTimeSlope * warmerC);

    /// <summary>The change of the rate, in percent a °C, that a slope of ln(time) stands for.</summary>
    public static double RateChangePctPerDegree(double lnTimeSlope) => 100 * (Math.Exp(-lnTimeSlope) - 1);

    /// <summary>The slope of ln(time) that a Q10 stands for.</summary>
    public static double LnTimeSlopeOfQ10(double q10)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(q10);
        return -Math.Log(q10) / 10;
    }
}
