namespace BakeInsights;

/// <summary>
/// How an invented kitchen's doughs really behave. The centre of all terms is a dough of 24 °C with 65 % hydration;
/// names are those of the fitted models' terms, so that an answer can be held against its truth.
/// </summary>
public sealed record KitchenTruth
{
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
}
