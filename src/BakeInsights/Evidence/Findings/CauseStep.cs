namespace BakeInsights;

/// <summary>The step of a cause that answers speak of: one that a baker would take.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Size">The step, in the measure's unit, or a factor.</param>
/// <param name="IsFactor">Whether the step is a factor.</param>
/// <param name="More">What having more of it is called, as in "in a warmer dough".</param>
internal sealed record CauseStep(Cause Cause, double Size, bool IsFactor, string More)
{
    /// <summary>All causes that answers speak of.</summary>
    public static IReadOnlyList<CauseStep> All { get; } =
    [
        new(Cause.DoughTemperature, 2, false, "in a warmer dough"),
        new(Cause.Yeast, 1.25, true, "with more yeast"),
        new(Cause.Hydration, 3, false, "in a wetter dough"),
        new(Cause.Salt, 0.5, false, "with more salt"),
        new(Cause.Sugar, 2, false, "with more sugar"),
        new(Cause.ProofTime, 5, false, "after a longer proof"),
    ];

    /// <summary>What is compared.</summary>
    public Contrast Contrast => IsFactor ? Contrast.Times(Cause.Measure, Size) : Contrast.More(Cause.Measure, Size);

    /// <summary>A dough a step above, or below, another.</summary>
    public DoughSettings From(DoughSettings settings, int steps)
    {
        var here = settings[Cause.Measure]!.Value;
        return settings.With(Cause.Measure, IsFactor ? here * Math.Pow(Size, steps) : here + (steps * Size));
    }
}
