namespace BakeInsights;

/// <summary>A formula with its chances.</summary>
/// <param name="Settings">What is set.</param>
/// <param name="Chance">
/// The chance, 0 to 1, that the next such bake meets every goal, all uncertainty counted. The ends are those of what the
/// chance would turn out to be, were the kitchen's effects known: 95 % of what is believed.
/// </param>
/// <param name="Goals">The chance of each goal by itself, in the order of the wish.</param>
/// <param name="IsBaked">Whether the formula lies among the doughs that were baked, in the convex hull of each model's bakes.</param>
public sealed record TunedFormula(DoughSettings Settings, Estimate Chance, IReadOnlyList<double> Goals, bool IsBaked);

/// <summary>What one step away from a formula does.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Change">By how much, in its canonical unit.</param>
/// <param name="Formula">What comes of it; a guess where it wasn't baked.</param>
public sealed record TuneStep(Measure Setting, double Change, TunedFormula Formula);

/// <summary>What one goal asks of the others.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="BestAlone">The best chance that it would have with no other goal.</param>
/// <param name="ChanceWithout">The chance of all other goals, with the formula that is best for them; null when there is no other.</param>
/// <param name="SafeBound">The bound with which all goals together have a chance of <see cref="Tuning.SafeChance"/> at the formula advised; null where none does.</param>
public sealed record GoalCost(TuneGoal Goal, double BestAlone, double? ChanceWithout, double? SafeBound);
