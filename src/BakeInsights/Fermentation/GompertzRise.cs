namespace BakeInsights;

/// <summary>The modified Gompertz curve: A exp{-exp[(mu e / A)(lag - t) + 1]}. It slows down longer than it sped up.</summary>
public sealed record GompertzRise : RiseCurve
{
    /// <summary>A curve by its three numbers.</summary>
    /// <param name="ceiling">A, the rise that the curve tends to, more than 0.</param>
    /// <param name="steepestPerMin">mu, the greatest slope, in rise for each minute, more than 0.</param>
    /// <param name="lagMin">The lag, in minutes.</param>
    public GompertzRise(double ceiling, double steepestPerMin, double lagMin)
        : base(ceiling, steepestPerMin, lagMin)
    {
    }

    /// <inheritdoc/>
    public override string Name => "Gompertz";

    /// <inheritdoc/>
    public override double SteepestAtMin => LagMin + (1 / Pace);

    // mu e / A: how fast the inner exponent falls, for each minute.
    private double Pace => SteepestPerMin * Math.E / Ceiling;

    /// <inheritdoc/>
    public override double Rise(double minutes) => Ceiling * Math.Exp(-Math.Exp(Inner(minutes)));

    /// <inheritdoc/>
    public override double Slope(double minutes) =>
        Ceiling * Pace * Math.Exp(Inner(minutes) - Math.Exp(Inner(minutes)));

    private protected override double MinutesBelowCeiling(double rise) =>
        LagMin + ((1 - Math.Log(-Math.Log(rise / Ceiling))) / Pace);

    private double Inner(double minutes) => (Pace * (LagMin - minutes)) + 1;
}
