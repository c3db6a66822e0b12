namespace BakeInsights;

/// <summary>A rate with an activation energy (Arrhenius): ln(rate) is a straight line in 1 / absolute temperature.</summary>
/// <remarks>
/// Over the ten degrees of a kitchen it can't be told from a constant percentage a degree; it is for comparing with
/// what chemists print, not for temperatures that yeast dislikes.
/// </remarks>
public sealed record ArrheniusResponse : TemperatureResponse
{
    /// <summary>The gas constant, in J/(mol K) (exact since the SI of 2019).</summary>
    public const double GasConstant = 8.31446261815324;

    private const double KelvinAtZeroC = 273.15;

    /// <summary>A response by its apparent activation energy.</summary>
    /// <param name="activationKjPerMol">The energy, in kJ/mol.</param>
    /// <param name="coldest">The lower end of the range it holds in.</param>
    /// <param name="warmest">The upper end of the range it holds in.</param>
    /// <param name="purpose">What it is for, with its source.</param>
    public ArrheniusResponse(double activationKjPerMol, Temperature coldest, Temperature warmest, string purpose)
        : base(coldest, warmest, purpose) => ActivationKjPerMol = activationKjPerMol;

    /// <summary>The apparent activation energy, in kJ/mol.</summary>
    public double ActivationKjPerMol { get; }

    /// <summary>The rate, 1 at 0 °C.</summary>
    public override double Rate(Temperature temperature) =>
        Math.Exp(1000 * ActivationKjPerMol / GasConstant * InverseKelvinBetween(Temperature.FromC(0), temperature));

    /// <summary>The activation energy, in kJ/mol, of a rate that grows so many times from one temperature to another.</summary>
    internal static double ActivationOf(double lnRatio, Temperature from, Temperature to) =>
        GasConstant * lnRatio / InverseKelvinBetween(from, to) / 1000;

    private static double InverseKelvinBetween(Temperature from, Temperature to) =>
        (1 / (from.C + KelvinAtZeroC)) - (1 / (to.C + KelvinAtZeroC));
}
