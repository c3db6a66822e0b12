namespace BakeInsights;

/// <summary>
/// The cardinal temperature model of microbial growth (Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447-463,
/// cited from memory): least, best and greatest temperature, and between them
/// (T - Tmax)(T - Tmin)² / {(Topt - Tmin) [(Topt - Tmin)(T - Topt) - (Topt - Tmax)(Topt + Tmin - 2T)]}.
/// </summary>
public sealed record CardinalResponse : TemperatureResponse
{
    /// <summary>A response by its three temperatures; it holds between the outer two.</summary>
    /// <param name="min">No growth at or below.</param>
    /// <param name="optimum">Fastest growth; above the middle of the others, for below it the curve has a pole.</param>
    /// <param name="max">No growth at or above.</param>
    /// <param name="purpose">What it is for, with its source.</param>
    public CardinalResponse(Temperature min, Temperature optimum, Temperature max, string purpose)
        : base(min, max, purpose)
    {
        if (!(optimum < max && optimum - min > max - optimum))
        {
            throw new ArgumentOutOfRangeException(
                nameof(optimum), optimum, FormattableString.Invariant($"The best temperature lies below {max} and nearer to it than to {min}."));
        }

        Optimum = optimum;
    }

    /// <summary>
    /// Growth of baker's yeast in a liquid medium: best 32.3 °C, greatest 45.4 °C (Salvado et al. 2011, Appl. Environ.
    /// Microbiol. 77:2292-2302); least 2.8 °C, from memory, in that paper's span of 1.3 to 4.3 °C for the genus. For
    /// how fast cells multiply in a starter; much flatter above 24 °C than a dough's rise is.
    /// </summary>
    public static CardinalResponse YeastGrowth { get; } = new(
        Temperature.FromC(2.8),
        Temperature.FromC(32.3),
        Temperature.FromC(45.4),
        "growth of baker's yeast in a liquid medium, not gassing in dough (Salvado et al. 2011)");

    /// <summary>The temperature of fastest growth.</summary>
    public Temperature Optimum { get; }

    /// <summary>The rate, 1 at the optimum and 0 from the outer temperatures on.</summary>
    public override double Rate(Temperature temperature)
    {
        if (temperature <= Coldest || temperature >= Warmest)
        {
            return 0;
        }

        var aboveMin = (temperature - Coldest).C;
        var span = (Optimum - Coldest).C;
        var below = (span * (temperature - Optimum).C)
            - ((Optimum - Warmest).C * ((Optimum - temperature) + (Coldest - temperature)).C);
        return (temperature - Warmest).C * aboveMin * aboveMin / (span * below);
    }
}
