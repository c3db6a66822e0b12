namespace BakeInsights;

/// <summary>One group of bakes, such as a bench of a class or a baker.</summary>
/// <param name="Group">The group as the journal spells it.</param>
/// <param name="Count">How many of the bakes used are its own.</param>
/// <param name="RawMean">
/// The plain mean of its results, of the logarithms for a time; in the result's canonical unit.
/// </param>
/// <param name="OwnMean">
/// Its mean by its own bakes alone, the other causes as in the average bake used, with the 95 % interval.
/// </param>
/// <param name="Effect">
/// How far it lies from the mean of all groups, drawn towards it as far as its bakes are few, with the 95 % interval; in
/// the result's canonical unit. Null with two groups, which are too few to know how far groups lie apart.
/// </param>
/// <param name="EffectPct">The same in percent, where the model speaks in percent; otherwise null.</param>
public sealed record GroupResult(
    string Group, int Count, double RawMean, Estimate OwnMean, Estimate? Effect, Estimate? EffectPct);
