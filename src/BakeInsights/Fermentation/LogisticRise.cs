namespace BakeInsights;

/// <summary>The modified logistic curve: A / {1 + exp[(4 mu / A)(lag - t) + 2]}. It slows down as it sped up.</summary>
public sealed record LogisticRise : RiseCurve
{
    /// <summary>A curve by its three numbers.</summary>
    /// <param name="ceiling">A, the rise that the curve tends to, more than 0.</param>
    /// <param name="steepestPerMin">mu, the greatest slope, in rise for each minute, more than 0.</param>
    /// <param name="lagMin">The lag, in minutes.</param>
    public LogisticRise(double ceiling, double steepestPerMin, double lagMin)
        : base(ceiling, steepestPerMin, lagMin)
    {
    }

    /// <inheritdoc/>
    public override string Name => "logistic";

    /// <inheritdoc/>
    public override double SteepestAtMin => LagMin + (2 / Pace);

    // 4 mu / A, for each minute.
    private double Pace => 4 * SteepestPerMin / Ceiling;

    /// <inheritdoc/>
    public override double Rise(double minutes) => Ceiling / (1 + Math.Exp(Inner(minutes)));

    /// <inheritdoc/>
    public override double Slope(double minutes)
    {
        var part = Rise(minutes) / Ceiling;
        return Ceiling * Pace * part * (1 - part);
    }

    private protected override double MinutesBelowCeiling(double rise) =>
        LagMin + ((2 - Math.Log((Ceiling / rise) - 1)) / Pace);

    private double Inner(double minutes) => (Pace * (LagMin - minutes)) + 2;
}
