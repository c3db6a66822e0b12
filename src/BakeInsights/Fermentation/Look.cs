namespace BakeInsights;

/// <summary>One look at a rising dough.</summary>
/// <param name="Minutes">Minutes since the rise began.</param>
/// <param name="Outcome">What a dent in a fresh spot did.</param>
public readonly record struct Look(double Minutes, PressTest Outcome);
