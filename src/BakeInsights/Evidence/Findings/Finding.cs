namespace BakeInsights;

/// <summary>
/// The answer to one question: an effect in kitchen terms with its interval, what it rests on, and how well the journal
/// bears it out. It rests on the journal alone; handbooks have no part in it.
/// </summary>
public sealed record Finding
{
    /// <summary>A fixed name for programs, such as <c>rise_time.dough_temperature</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The question, one sentence.</summary>
    public required string Question { get; init; }

    /// <summary>The measure that the answer is about.</summary>
    public required Measure Result { get; init; }

    /// <summary>What is compared.</summary>
    public required Contrast Contrast { get; init; }

    /// <summary>
    /// The difference in the result, in its canonical unit, with the 95 % interval of this question asked alone.
    /// </summary>
    public required Estimate Effect { get; init; }

    /// <summary>The same in percent of the result, where the model speaks in percent; otherwise null.</summary>
    public Estimate? EffectPct { get; init; }

    /// <summary>
    /// Where the model bends: how far the mean of a step up and a step down lies from the typical dough; otherwise null.
    /// A cause whose best value is the typical one does nothing by a step, and much by its bend.
    /// </summary>
    public Estimate? Bend { get; init; }

    /// <summary>
    /// How often chance alone would give an effect as clear as this, were there none; of this question asked alone.
    /// </summary>
    public required double PValue { get; init; }

    /// <summary>
    /// The same with every question of the family counted (Holm 1979, Scandinavian Journal of Statistics 6:65-70).
    /// </summary>
    public double FamilyPValue { get; init; } = 1;

    /// <summary>
    /// How much of the family's chance of a false finding the question is given, against 1 of a question asked beside the
    /// others; fixed for the question, whatever the journal.
    /// </summary>
    public double Weight { get; init; } = 1;

    /// <summary>How well it is borne out.</summary>
    public Strength Strength { get; init; }

    /// <summary>Whether it counts as a finding: borne out, with all questions counted.</summary>
    public bool IsFinding => Strength >= Strength.BorneOut;

    /// <summary>The bakes behind it.</summary>
    public required IReadOnlyList<Bake> Bakes { get; init; }

    /// <summary>The bakes that can't speak to it, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOut { get; init; } = [];

    /// <summary>Bakes that lie far off or steer the answer.</summary>
    public IReadOnlyList<OddBake> OddBakes { get; init; } = [];

    /// <summary>
    /// The effect without the odd bakes; null when there are none, or when too few bakes are left without them.
    /// </summary>
    public Estimate? WithoutOddBakes { get; init; }

    /// <summary>The bend without the odd bakes.</summary>
    public Estimate? BendWithoutOddBakes { get; init; }

    /// <summary>The causes that moved together with this one so far that the journal hardly tells them apart.</summary>
    public IReadOnlyList<Measure> MovedTogetherWith { get; init; } = [];

    /// <summary>What to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>What to do next, one sentence.</summary>
    public required string NextStep { get; init; }
}
