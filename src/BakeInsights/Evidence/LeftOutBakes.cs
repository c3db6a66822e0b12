namespace BakeInsights;

/// <summary>Bakes that an answer does not rest on, and why.</summary>
/// <param name="Reason">Why, in a few words.</param>
/// <param name="Bakes">Which.</param>
public sealed record LeftOutBakes(string Reason, IReadOnlyList<Bake> Bakes);
