namespace BakeInsights;

/// <summary>Something that one could do at every bake so that the journal says more.</summary>
/// <param name="Words">What to do, one sentence.</param>
/// <param name="Bakes">How many bakes of the month would have gained by it; for rows set aside, how many rows.</param>
public sealed record Habit(string Words, int Bakes);
