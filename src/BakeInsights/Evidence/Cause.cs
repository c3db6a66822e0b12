namespace BakeInsights;

/// <summary>Something that may move a result, as a model sees it.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Centre">The value that the model counts from, in the measure's canonical unit.</param>
/// <param name="Resolution">
/// The smallest difference that a kitchen's instruments tell apart; values closer than that are one level. Common
/// practice, no source: a probe reads to 1 °C, a scale to 1 g in a dough of a kilogram or two.
/// </param>
internal sealed record Cause(Measure Measure, double Centre, double Resolution)
{
    /// <summary>The temperature that dough models count from, in °C.</summary>
    public const double CentreTemperatureC = 24;

    /// <summary>The hydration that dough models count from, in percent.</summary>
    public const double CentreHydrationPct = 65;

    // Common practice, no source: a second rise of a straight dough takes about this long.
    private const double CentreProofMin = 45;

    public static Cause DoughTemperature { get; } = new(Measures.DoughTemperature, CentreTemperatureC, 1);

    public static Cause Hydration { get; } = new(Measures.Hydration, CentreHydrationPct, 1);

    public static Cause Yeast { get; } = new(Measures.Yeast, 0, 0.1);

    public static Cause Salt { get; } = new(Measures.Salt, 0, 0.1);

    public static Cause Sugar { get; } = new(Measures.Sugar, 0, 0.5);

    public static Cause ProofTime { get; } = new(Measures.ProofTime, CentreProofMin, 3);

    // 1.9 less 1.8 is a little under 0.1 in binary.
    private const double RoundingShare = 1e-9;

    /// <summary>How many levels these values show.</summary>
    public int LevelsOf(IEnumerable<double> values)
    {
        var levels = 0;
        var levelStart = double.NegativeInfinity;
        double[] ordered = [.. values];
        Array.Sort(ordered);
        foreach (var value in ordered)
        {
            if (value - levelStart >= Resolution * (1 - RoundingShare))
            {
                levels++;
                levelStart = value;
            }
        }

        return levels;
    }
}
