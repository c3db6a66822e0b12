using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Finds causes that moved together, so that a journal hardly tells their work apart.</summary>
internal static class MovedTogether
{
    /// <summary>
    /// A variance inflation factor of 10, the usual alarm (see the source of the threshold), is a squared correlation of
    /// 0.9 where there are two causes.
    /// </summary>
    public static readonly double AlarmingSquare = 1 - (1 / Thresholds.VarianceInflation.Value);

    /// <summary>Any three points are near some line: fewer bakes than this line up by chance. Our own choice.</summary>
    public const int LeastBakes = 4;

    /// <summary>
    /// The measures among the others that moved with this one, whether or not a model has a term for them: a cause that
    /// a fit left out as entangled is just what the one it kept can't be told from.
    /// </summary>
    public static IReadOnlyList<Measure> With(Measure measure, IEnumerable<Measure> others, IReadOnlyList<Bake> bakes) =>
        [.. others.Where(other => other != measure && SquaredCorrelation(measure, other, bakes) >= AlarmingSquare)];

    /// <summary>The correlation of two series of one length; null where one of them doesn't vary.</summary>
    public static double? Correlation(IReadOnlyList<double> one, IReadOnlyList<double> other) => LeastSquares
        .Fit(new Design(DesignColumn.Constant(one.Count), new DesignColumn("one", one)), other)
        .Match<double?>(fit => Math.CopySign(Math.Sqrt(Math.Clamp(fit.RSquared, 0, 1)), fit.Terms[1].Estimate), _ => null);

    private static double SquaredCorrelation(Measure one, Measure other, IReadOnlyList<Bake> bakes)
    {
        var both = bakes.Where(bake => one.Of(bake) is not null && other.Of(bake) is not null).ToList();
        return both.Count >= Math.Max(LeastBakes, bakes.Count / 2)
            && Correlation([.. both.Select(one.Of).Known()], [.. both.Select(other.Of).Known()]) is { } correlation
            ? correlation * correlation
            : 0;
    }
}
