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

    // The most important first: when bakes are few, the last are left out first.
    private static readonly IReadOnlyList<CandidateTerm> Candidates =
    [
        CandidateTerm.Line(DoughTemperatureTerm, "ln(min) per °C", Cause.DoughTemperature),
        CandidateTerm.Log(LogYeastTerm, "ln(min) per ln(percent)", Cause.Yeast),
        CandidateTerm.Line(HydrationTerm, PerPoint, Cause.Hydration),
        CandidateTerm.Line(SaltTerm, PerPoint, Cause.Salt),
        CandidateTerm.Line(SugarTerm, PerPoint, Cause.Sugar),
    ];

    /// <summary>
    /// Fits the natural logarithm of the rise time on dough temperature, hydration, the logarithm of yeast, salt and
    /// sugar, as far as the bakes support them. A straight line in the logarithm makes each cause a percentage: the
    /// trade's own way of speaking of temperature.
    /// </summary>
    public static Attempt<RiseTimeAnswer> Ask(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var aside = new List<LeftOutBakes>();
        var kept = bakes;
        SetAside("no rise time", bake => Measures.RiseTime.Of(bake) is null);
        SetAside("stopped before it was ready", bake => bake.RiseOutcome == RiseOutcome.Stopped);
        SetAside("partly in the cold", bake => bake[BakeColumns.Cold] > 0);
        SetAside(
            $"dough warmer than {TemperatureCoefficient.WarmestC:0} °C, where the straight line ends",
            bake => Measures.DoughTemperature.Of(bake) > TemperatureCoefficient.WarmestC);
        return FittedModel
            .Make(kept, Candidates, "rise time", bake => Math.Log(Measures.RiseTime.Of(bake)!.Value))
            .Select(model => new RiseTimeAnswer(model, aside));

        void SetAside(string reason, Func<Bake, bool> applies)
        {
            var these = kept.Where(applies).ToList();
            if (these.Count > 0)
            {
                aside.Add(new LeftOutBakes(reason, these));
                kept = [.. kept.Except(these)];
            }
        }
    }
}
