namespace BakeInsights;

/// <summary>
/// How an invented kitchen's doughs really behave. The centre of all terms is a dough of 24 °C with 65 % hydration;
/// names are those of the fitted models' terms, so that an answer can be held against its truth.
/// </summary>
public sealed record KitchenTruth
{
    /// <summary>Salt of a usual dough, in percent of flour (usual 1.8 to 2, common practice).</summary>
    internal const double UsualSaltPct = 2;

    /// <summary>Minutes of first rise at the centre with 1 % instant yeast and no salt.</summary>
    public double RiseMinutesAtCentre { get; init; } = 88;

    /// <summary>Slope of ln(minutes) for each °C of dough: the trade's 10 % a degree.</summary>
    public double RiseDoughTemperature { get; init; } = TemperatureCoefficient.LnTimeSlope(10);

    /// <summary>Slope of ln(minutes) for each point of hydration.</summary>
    public double RiseHydration { get; init; } = -0.01;

    /// <summary>Slope of ln(minutes) on ln(yeast percent).</summary>
    public double RiseLogYeast { get; init; } = -0.8;

    /// <summary>Slope of ln(minutes) for each percent of salt.</summary>
    public double RiseSalt { get; init; } = 0.07;

    /// <summary>Slope of ln(minutes) for each percent of sugar; the demo month's doughs have none.</summary>
    public double RiseSugar { get; init; }

    /// <summary>Standard deviation of ln(minutes) about its mean.</summary>
    public double RiseResidualSd { get; init; } = 0.07;

    /// <summary>Specific volume at the centre, in mL/g.</summary>
    public double VolumeAtCentre { get; init; } = 4.05;

    /// <summary>Slope of specific volume for each point of hydration, at the centre.</summary>
    public double VolumeHydration { get; init; } = 0.06;

    /// <summary>Half the curvature in hydration: the best hydration at 24 °C is 65 + 0.06 / 0.012 = 70 %.</summary>
    public double VolumeHydrationSquared { get; init; } = -0.006;

    /// <summary>Slope of specific volume for each °C of dough, at the centre.</summary>
    public double VolumeDoughTemperature { get; init; } = 0.03;

    /// <summary>Half the curvature in dough temperature.</summary>
    public double VolumeDoughTemperatureSquared { get; init; } = -0.012;

    /// <summary>How the slope on hydration changes for each °C of dough.</summary>
    public double VolumeHydrationXDoughTemperature { get; init; }

    /// <summary>Standard deviation of specific volume about its mean, in mL/g.</summary>
    public double VolumeResidualSd { get; init; } = 0.13;

    /// <summary>The truth of the terms that <see cref="BakeInsights.RiseTime"/> asks for, by their names.</summary>
    public IReadOnlyDictionary<string, double> RiseTime => new Dictionary<string, double>
    {
        [FittedModel.Intercept] = Math.Log(RiseMinutesAtCentre),
        [BakeInsights.RiseTime.DoughTemperatureTerm] = RiseDoughTemperature,
        [BakeInsights.RiseTime.LogYeastTerm] = RiseLogYeast,
        [BakeInsights.RiseTime.HydrationTerm] = RiseHydration,
        [BakeInsights.RiseTime.SaltTerm] = RiseSalt,
        [BakeInsights.RiseTime.SugarTerm] = RiseSugar,
    };

    /// <summary>The truth of the terms that <see cref="BakeInsights.LoafVolume"/> asks for, by their names.</summary>
    public IReadOnlyDictionary<string, double> LoafVolume => new Dictionary<string, double>
    {
        [FittedModel.Intercept] = VolumeAtCentre,
        [BakeInsights.LoafVolume.HydrationTerm] = VolumeHydration,
        [BakeInsights.LoafVolume.DoughTemperatureTerm] = VolumeDoughTemperature,
        [BakeInsights.LoafVolume.HydrationSquaredTerm] = VolumeHydrationSquared,
        [BakeInsights.LoafVolume.DoughTemperatureSquaredTerm] = VolumeDoughTemperatureSquared,
        [BakeInsights.LoafVolume.ProductTerm] = VolumeHydrationXDoughTemperature,
    };

    /// <summary>The hydration of the largest loaf at 24 °C, in percent; null where the volume has no peak.</summary>
    public double? BestHydrationPct => VolumeHydrationSquared < 0
        ? ModelAnswer.CentreHydrationPct - (VolumeHydration / (2 * VolumeHydrationSquared))
        : null;

    /// <summary>
    /// The truth of a kitchen in which nothing moves anything: the same spreads of one bake, all else 0, and rises as
    /// long as those of a dough with 2 % salt here.
    /// </summary>
    public KitchenTruth WithoutEffects() => new()
    {
        RiseMinutesAtCentre = RiseMinutesAtCentre * Math.Exp(RiseSalt * UsualSaltPct),
        RiseDoughTemperature = 0,
        RiseHydration = 0,
        RiseLogYeast = 0,
        RiseSalt = 0,
        RiseResidualSd = RiseResidualSd,
        VolumeAtCentre = VolumeAtCentre,
        VolumeHydration = 0,
        VolumeHydrationSquared = 0,
        VolumeDoughTemperature = 0,
        VolumeDoughTemperatureSquared = 0,
        VolumeResidualSd = VolumeResidualSd,
    };

    /// <summary>What the rest of the dough makes of ln(minutes), temperature and chance left out.</summary>
    internal double LnRiseOf(double hydrationPct, double yeastPct, double saltPct, double sugarPct) =>
        Math.Log(RiseMinutesAtCentre)
        + (RiseHydration * (hydrationPct - ModelAnswer.CentreHydrationPct))
        + (RiseLogYeast * Math.Log(yeastPct))
        + (RiseSalt * saltPct)
        + (RiseSugar * sugarPct);

    /// <summary>Specific volume in mL/g, chance left out.</summary>
    internal double SpecificVolume(double doughC, double hydrationPct)
    {
        var warmth = doughC - ModelAnswer.CentreTemperatureC;
        var wetness = hydrationPct - ModelAnswer.CentreHydrationPct;
        return VolumeAtCentre
            + (wetness * (VolumeHydration + (VolumeHydrationSquared * wetness)))
            + (warmth * (VolumeDoughTemperature + (VolumeDoughTemperatureSquared * warmth)))
            + (VolumeHydrationXDoughTemperature * wetness * warmth);
    }
}
