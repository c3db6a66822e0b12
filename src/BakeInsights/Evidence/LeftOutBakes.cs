namespace BakeInsights;

/// <summary>Bakes that an answer does not rest on, and why.</summary>
/// <param name="Reason">Why, in a few words.</param>
/// <param name="Bakes">Which; empty where the journal is too long to keep its bakes.</param>
public sealed record LeftOutBakes(string Reason, IReadOnlyList<Bake> Bakes)
{
    /// <summary>How many.</summary>
    public int Count { get; init; } = Bakes.Count;
}
