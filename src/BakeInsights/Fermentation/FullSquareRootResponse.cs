namespace BakeInsights;

/// <summary>
/// The square-root model over the whole range of growth: root of the rate = b (T - Tmin) {1 - exp[c (T - Tmax)]}
/// (Ratkowsky, Lowry, McMeekin, Stokes and Chandler 1983, J. Bacteriol. 154:1222-1226).
/// </summary>
public sealed record FullSquareRootResponse : TemperatureResponse
{
    /// <summary>A response by its two slopes and two temperatures.</summary>
    /// <param name="slope">b, for each °C, more than 0.</param>
    /// <param name="min">Tmin, no growth at or below.</param>
    /// <param name="fall">c, for each °C, more than 0: how sharply the rate falls above its best temperature.</param>
    /// <param name="max">Tmax, no growth at or above.</param>
    /// <param name="purpose">What it is for, with its source.</param>
    public FullSquareRootResponse(double slope, Temperature min, double fall, Temperature max, string purpose)
        : base(min, max, purpose)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slope);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fall);
        Slope = slope;
        Fall = fall;
    }

    /// <summary>b, for each °C.</summary>
    public double Slope { get; }

    /// <summary>c, for each °C.</summary>
    public double Fall { get; }

    /// <summary>The rate; 0 outside the two temperatures.</summary>
    public override double Rate(Temperature temperature)
    {
        if (!HoldsAt(temperature))
        {
            return 0;
        }

        var root = Slope * (temperature - Coldest).C * (1 - Math.Exp(Fall * (temperature - Warmest).C));
        return root * root;
    }
}
