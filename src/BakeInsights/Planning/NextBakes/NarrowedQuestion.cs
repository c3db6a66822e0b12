namespace BakeInsights;

/// <summary>A question that more bakes can narrow.</summary>
public sealed class NarrowedQuestion
{
    // A best hydration within two points, and the effect of a step within 5 % of the rise time, leave a kitchen little to
    // gain from knowing more. Our own choice; used to say which question is the most open.
    private const double SettledPoints = 2;
    private const double SettledPct = 5;

    private NarrowedQuestion(string name, string words, string unit, Question model, CauseStep step, double settled)
    {
        (Name, Words, Unit, Model, Step, Settled) = (name, words, unit, model, step, settled);
        OwnTerms = IsOptimum
            ? [LoafVolume.HydrationTerm, LoafVolume.HydrationSquaredTerm]
            : [model.Candidates.First(term => term.Causes[0] == step.Cause).Name];
    }

    /// <summary>Which hydration gives the largest loaves.</summary>
    public static NarrowedQuestion BestHydration { get; } = new(
        "best_hydration", "Which hydration gives the largest loaves?", "points of hydration", LoafVolume.Question,
        StepOf(Cause.Hydration), SettledPoints);

    /// <summary>What a warmer dough does to the rise time.</summary>
    public static NarrowedQuestion RiseByDoughTemperature { get; } = Rise("rise_by_dough_temperature", Cause.DoughTemperature);

    /// <summary>What more yeast does to the rise time.</summary>
    public static NarrowedQuestion RiseByYeast { get; } = Rise("rise_by_yeast", Cause.Yeast);

    /// <summary>What a wetter dough does to the rise time.</summary>
    public static NarrowedQuestion RiseByHydration { get; } = Rise("rise_by_hydration", Cause.Hydration);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NarrowedQuestion> All { get; } = [BestHydration, RiseByDoughTemperature, RiseByYeast, RiseByHydration];

    /// <summary>A fixed name for programs.</summary>
    public string Name { get; }

    /// <summary>The question, one sentence.</summary>
    public string Words { get; }

    /// <summary>What its interval is counted in.</summary>
    public string Unit { get; }

    /// <summary>Whether it asks for a best setting; otherwise for the effect of a step.</summary>
    public bool IsOptimum => Name == "best_hydration";

    /// <summary>The step of the setting that the question is about.</summary>
    public Contrast Contrast => Step.Contrast;

    internal Question Model { get; }

    internal CauseStep Step { get; }

    /// <summary>Half an interval at which it counts as settled, in its unit.</summary>
    internal double Settled { get; }

    /// <summary>The terms without which it can't be asked.</summary>
    internal IReadOnlyList<string> OwnTerms { get; }

    private static NarrowedQuestion Rise(string name, Cause cause)
    {
        var step = StepOf(cause);
        return new(name, $"How much quicker or slower is the first rise {step.More}?", "percent of the rise time", RiseTime.Question, step, SettledPct);
    }

    private static CauseStep StepOf(Cause cause) => CauseStep.All.Single(step => step.Cause == cause);
}
