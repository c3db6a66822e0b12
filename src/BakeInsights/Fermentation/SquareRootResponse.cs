namespace BakeInsights;

/// <summary>
/// The square-root model of microbial growth in the cold: root of the rate = b (T - Tmin) (Ratkowsky, Olley, McMeekin
/// and Ball 1982, J. Bacteriol. 149:1-5). For growth well below its best temperature, as in a cold retard.
/// </summary>
public sealed record SquareRootResponse : TemperatureResponse
{
    /// <summary>A response by its slope and its notional least temperature.</summary>
    /// <param name="slope">b, for each °C, more than 0; squared, it carries the unit of the rate.</param>
    /// <param name="min">Tmin, where the line meets zero: seldom a temperature at which growth was seen to stop.</param>
    /// <param name="warmest">The upper end of the range it holds in, below the best temperature.</param>
    /// <param name="purpose">What it is for, with its source.</param>
    public SquareRootResponse(double slope, Temperature min, Temperature warmest, string purpose)
        : base(min, warmest, purpose)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(slope);
        Slope = slope;
    }

    /// <summary>b, for each °C.</summary>
    public double Slope { get; }

    /// <summary>The rate; 0 below the least temperature.</summary>
    public override double Rate(Temperature temperature)
    {
        var root = Slope * Math.Max(0, (temperature - Coldest).C);
        return root * root;
    }
}
