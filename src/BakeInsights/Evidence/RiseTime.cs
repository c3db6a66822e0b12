using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The question what moved the time of the first rise.</summary>
public static class RiseTime
{
    /// <summary>The term of the dough's temperature.</summary>
    public const string DoughTemperatureTerm = "dough_temperature";

    /// <summary>The term of hydration.</summary>
    public const string HydrationTerm = "hydration";

    /// <summary>The term of ln(yeast percent).</summary>
    public const string LogYeastTerm = "log_yeast";

    /// <summary>The term of salt.</summary>
    public const string SaltTerm = "salt";

    /// <summary>The term of sugar.</summary>
    public const string SugarTerm = "sugar";

    private const string PerPoint = "ln(min) per percent of flour";

    /// <summary>Bakes that spent a part of the rise in the cold.</summary>
    internal static Exclusion Cold { get; } = new("partly in the cold", bake => bake[BakeColumns.Cold] > 0);

    internal static Question Question { get; } = new(
        Measures.RiseTime,
        "rise time",
        bake => Looks.Middle(bake[BakeColumns.RiseNotReady], bake[BakeColumns.Rise]),
        ResultScale.Logarithm,
        "ln(min)",
        [
            new("no rise time", bake => Measures.RiseTime.Of(bake) is null),
            new("stopped before it was ready", bake => bake.RiseOutcome == RiseOutcome.Stopped),
            Looks.ReadyAtFirst(BakeColumns.RiseNotReady),
            Cold,
            new(
                FormattableString.Invariant($"dough warmer than {TemperatureCoefficient.WarmestC:0} °C, where the straight line ends"),
                IsTooWarm),
        ],
        [
            CandidateTerm.Line(DoughTemperatureTerm, "ln(min) per °C", Cause.DoughTemperature),
            CandidateTerm.Log(LogYeastTerm, "ln(min) per ln(percent)", Cause.Yeast),
            CandidateTerm.Line(HydrationTerm, PerPoint, Cause.Hydration),
            CandidateTerm.Line(SaltTerm, PerPoint, Cause.Salt),
            CandidateTerm.Line(SugarTerm, PerPoint, Cause.Sugar),
        ]);

    /// <summary>Whether the straight line holds for a bake: not in the cold, and not too warm.</summary>
    internal static bool IsWithinTheLine(Bake bake) => !Cold.Applies(bake) && !IsTooWarm(bake);

    private static bool IsTooWarm(Bake bake) => Measures.DoughTemperature.Of(bake) > TemperatureCoefficient.WarmestC;

    /// <summary>
    /// Fits the natural logarithm of the rise time on dough temperature, hydration, the logarithm of yeast, salt and
    /// sugar, as far as the bakes support them. A straight line in the logarithm makes each cause a percentage: the
    /// trade's own way of speaking of temperature.
    /// </summary>
    public static Attempt<RiseTimeAnswer> Ask(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        return FittedModel.Make(Question, bakes).Select(model => new RiseTimeAnswer(model));
    }
}
