namespace BakeInsights;

/// <summary>What the virtual kitchen's probe, scales and seeds get wrong, as standard deviations.</summary>
public sealed record KitchenInstruments
{
    /// <summary>Instruments without error, whose readings are written to the last digit.</summary>
    public static KitchenInstruments Exact { get; } =
        new() { ProbeSdC = 0, ScaleSdG = 0, FineScaleSdG = 0, SeedRelativeSd = 0, PieceSdG = 0, Rounds = false };

    /// <summary>
    /// The probe, in °C: a good one is right to 0.5, a consumer's to 1 (common practice; the Food Code, 4-203.11, allows 1).
    /// A reading scatters about the temperature, so slopes on it come out flatter.
    /// </summary>
    public double ProbeSdC { get; init; } = 0.5;

    /// <summary>
    /// The scale for flour and water, in g: 1 g off is two of these (common practice). What is in the bowl scatters about
    /// what was written, so slopes stay as they are.
    /// </summary>
    public double ScaleSdG { get; init; } = 0.5;

    /// <summary>The scale for salt and yeast, in g (a scale that reads 0.1 g, common practice).</summary>
    public double FineScaleSdG { get; init; } = 0.1;

    /// <summary>A loaf's volume by seeds, as a share of it: repeats differ by 1 to 2 % (from memory, no source at hand).</summary>
    public double SeedRelativeSd { get; init; } = 0.015;

    /// <summary>Pieces of a dough about their mean, in g. Our own choice.</summary>
    public double PieceSdG { get; init; } = 5;

    /// <summary>Whether readings are rounded as people write them: 0.1 °C, whole minutes and grams, 10 mL a loaf.</summary>
    public bool Rounds { get; init; } = true;

    /// <summary>A reading as it is written.</summary>
    /// <param name="value">What was read.</param>
    /// <param name="step">The step of the scale.</param>
    internal double Written(double value, double step) => Rounds ? Math.Round(Math.Round(value / step) * step, 6) : value;
}
