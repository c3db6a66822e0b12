using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>A cup or spoon of the sets that are sold. The larger hold whole multiples of an eighth of a teaspoon.</summary>
/// <param name="Name">The name stamped on it.</param>
/// <param name="Eighths">How many eighths of a teaspoon it holds.</param>
public sealed record MeasuringTool(string Name, int Eighths)
{
    /// <summary>Eighths of a teaspoon in a US customary cup: 16 tablespoons of 3 teaspoons.</summary>
    public const int EighthsInCup = 8 * 3 * 16;

    /// <summary>The usual set, largest first (common practice, no source).</summary>
    public static ImmutableArray<MeasuringTool> Set { get; } =
    [
        new("1 cup", EighthsInCup),
        new("1/2 cup", EighthsInCup / 2),
        new("1/3 cup", EighthsInCup / 3),
        new("1/4 cup", EighthsInCup / 4),
        new("1 tbsp", 24),
        new("1 tsp", 8),
        new("1/2 tsp", 4),
        new("1/4 tsp", 2),
        new("1/8 tsp", 1),
    ];
}
