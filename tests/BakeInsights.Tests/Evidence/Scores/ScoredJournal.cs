using System.Collections.Immutable;

namespace BakeInsights.Tests;

/// <summary>Scored journals as a test describes them.</summary>
internal static class ScoredJournal
{
    /// <summary>Bakes whose hydration, dough temperature and proof time change, each in its own rhythm.</summary>
    public static IReadOnlyList<Bake> Bakes(int count) =>
        Dough.Bakes(count, (dough, index) => dough with { ProofMin = 35 + (5 * (index * 4 % 7)), YeastPct = 1 });

    /// <summary>A score of a whole bake, or of one of its loaves.</summary>
    public static Score Score(Bake bake, string? judge, string attribute, double value, string? loaf = null) => new(
        bake.Id, loaf, judge, attribute, value, new SourceLine("scores.csv", 2), ImmutableSortedDictionary<string, string>.Empty);

    /// <summary>A scale.</summary>
    public static ScoredAttribute Scale(string name, double low, double high, AttributeKind? kind) => new(
        name, low, high, kind, new SourceLine("attributes.csv", 2), ImmutableSortedDictionary<string, string>.Empty);

    /// <summary>A whole score from 1 to a highest.</summary>
    public static double Whole(double value, double highest) => Math.Clamp(Math.Round(value), 1, highest);
}
