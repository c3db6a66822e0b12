namespace BakeInsights.Inference;

/// <summary>How a robust fit weighs a residual, given in units of the scale.</summary>
/// <param name="Weight">The weight: 1 near 0, falling outwards.</param>
/// <param name="InfluenceSlope">The derivative of residual times weight.</param>
internal sealed record RobustLoss(Func<double, double> Weight, Func<double, double> InfluenceSlope)
{
    /// <summary>
    /// Where Huber's weights begin to fall: 95 % efficiency under normal errors. Huber (1964), Robust estimation of a
    /// location parameter, Annals of Mathematical Statistics 35, 73-101; Holland and Welsch (1977), Communications in
    /// Statistics A 6, 813-827.
    /// </summary>
    private const double HuberBend = 1.345;

    /// <summary>
    /// Where the bisquare's weights reach zero: 95 % efficiency under normal errors. Beaton and Tukey (1974),
    /// Technometrics 16, 147-185; Holland and Welsch (1977).
    /// </summary>
    private const double BisquareEnd = 4.685;

    /// <summary>The same to more digits, used where the scale is given: Maronna, Martin and Yohai (2006), Robust
    /// Statistics, Wiley, section 2.3.</summary>
    private const double EfficientBisquareEnd = 4.685061;

    /// <summary>
    /// Where the bisquare's weights reach zero for the scale of an S-estimate: half of the rows may be wild. Rousseeuw
    /// and Yohai (1984), Robust regression by means of S-estimators, Lecture Notes in Statistics 26, 256-272.
    /// </summary>
    private const double HalfBreakdownBisquareEnd = 1.54764;

    /// <summary>Huber's: full weight to the bend, then falling with the distance.</summary>
    public static RobustLoss Huber { get; } = new(
        u => Math.Abs(u) <= HuberBend ? 1 : HuberBend / Math.Abs(u),
        u => Math.Abs(u) <= HuberBend ? 1 : 0);

    /// <summary>The bisquare for a scale that is estimated along.</summary>
    public static RobustLoss Bisquare { get; } = BisquareTo(BisquareEnd);

    /// <summary>The bisquare of the last step of an MM-estimate.</summary>
    public static RobustLoss EfficientBisquare { get; } = BisquareTo(EfficientBisquareEnd);

    /// <summary>The bisquare of an S-estimate.</summary>
    public static RobustLoss HalfBreakdownBisquare { get; } = BisquareTo(HalfBreakdownBisquareEnd);

    /// <summary>The loss of an S-estimate: 0 at 0, rising to 1 where the weight reaches zero.</summary>
    public static double HalfBreakdownRho(double u)
    {
        var left = Left(u / HalfBreakdownBisquareEnd);
        return 1 - (left * left * left);
    }

    private static RobustLoss BisquareTo(double end) => new(
        u => Left(u / end) * Left(u / end),
        u => Left(u / end) * (1 - (5 * u * u / (end * end))));

    private static double Left(double share) => Math.Max(0, 1 - (share * share));
}
