namespace BakeInsights;

/// <summary>A cause that may move a score.</summary>
/// <param name="Name">Its name for programs.</param>
/// <param name="Step">The step that answers speak of.</param>
internal sealed record ScoreCause(string Name, CauseStep Step)
{
    /// <summary>The causes, the most important first: when bakes are few, the last are left out first.</summary>
    public static IReadOnlyList<ScoreCause> All { get; } =
    [
        new("hydration", StepOf(Cause.Hydration)),
        new("dough_temperature", StepOf(Cause.DoughTemperature)),
        new("proof_time", StepOf(Cause.ProofTime)),
    ];

    private static CauseStep StepOf(Cause cause) => CauseStep.All.Single(step => step.Cause == cause);
}
