namespace BakeInsights;

/// <summary>Something to do next.</summary>
/// <param name="Words">What, one sentence.</param>
/// <param name="Why">What in the journal asks for it, a few words.</param>
public sealed record NextThing(string Words, string Why);
