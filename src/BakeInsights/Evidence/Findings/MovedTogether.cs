using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Finds causes that moved together, so that a journal hardly tells their work apart.</summary>
internal static class MovedTogether
{
    // A variance inflation factor of 10, the usual alarm (see the source of the threshold), is a squared correlation of
    // 0.9 where there are two causes.
    private static readonly double AlarmingSquare = 1 - (1 / Thresholds.VarianceInflation.Value);

    // Our own choice: fewer bakes than this line up by chance.
    private const int LeastBakes = 4;

    /// <summary>
    /// The measures among the others that moved with this one, whether or not a model has a term for them: a cause that
    /// a fit left out as entangled is just what the one it kept can't be told from.
    /// </summary>
    public static IReadOnlyList<Measure> With(Measure measure, IEnumerable<Measure> others, IReadOnlyList<Bake> bakes) =>
        [.. others.Where(other => other != measure && SquaredCorrelation(measure, other, bakes) >= AlarmingSquare)];

    private static double SquaredCorrelation(Measure one, Measure other, IReadOnlyList<Bake> bakes)
    {
        var pairs = bakes.Select(bake => (One: one.Of(bake), Other: other.Of(bake)))
            .Where(pair => pair is { One: not null, Other: not null })
            .Select(pair => (One: pair.One!.Value, Other: pair.Other!.Value))
            .ToList();
        if (pairs.Count < Math.Max(LeastBakes, bakes.Count / 2))
        {
            return 0;
        }

        var (meanOne, meanOther) = (pairs.Average(pair => pair.One), pairs.Average(pair => pair.Other));
        var (squareOne, squareOther, product) = (0.0, 0.0, 0.0);
        foreach (var (x, y) in pairs)
        {
            squareOne += (x - meanOne) * (x - meanOne);
            squareOther += (y - meanOther) * (y - meanOther);
            product += (x - meanOne) * (y - meanOther);
        }

        return squareOne > 0 && squareOther > 0 ? product * product / (squareOne * squareOther) : 0;
    }
}
