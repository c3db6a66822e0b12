using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// The doughs that were baked, and the way back to them: a formula outside the convex hull of any model's bakes is moved
/// along the line to the house formula until it is inside.
/// </summary>
internal sealed class BakedRegion
{
    // A place on the edge is inside, but for the last digits.
    private const double JustInside = 1 - 1e-6;

    private readonly IReadOnlyList<(int[] Axes, ConvexRegion Hull)> _hulls;

    private BakedRegion(IReadOnlyList<Measure> axes, IReadOnlyList<(int[] Axes, ConvexRegion Hull)> hulls, double[] anchor, bool holdsHouse) =>
        (Axes, _hulls, Anchor, HoldsHouse) = (axes, hulls, anchor, holdsHouse);

    /// <summary>The settings that the models speak of.</summary>
    public IReadOnlyList<Measure> Axes { get; }

    /// <summary>The house formula, or where the line to it from the middle of the bakes leaves what was baked.</summary>
    public double[] Anchor { get; }

    /// <summary>Whether the house formula is among the doughs baked.</summary>
    public bool HoldsHouse { get; }

    /// <summary>The region of some models' bakes.</summary>
    /// <returns>The region, or null when no bake served all models.</returns>
    public static BakedRegion? Of(IReadOnlyList<FittedModel> models, IReadOnlyList<Measure> axes, double[] house)
    {
        var shared = models.Skip(1).Aggregate(models[0].Selection.Bakes.AsEnumerable(), (bakes, model) => bakes.Intersect(model.Selection.Bakes))
            .Where(bake => axes.All(axis => axis.Of(bake) is not null)).ToList();
        if (shared.Count == 0)
        {
            return null;
        }

        var hulls = models.Select(model =>
        {
            int[] own = [.. Enumerable.Range(0, axes.Count).Where(axis => AxesOf(model).Contains(axes[axis]))];
            return (own, ConvexRegion.Of([.. model.Selection.Bakes.Select(bake => own.Select(axis => axes[axis].Of(bake)!.Value).ToArray())]));
        }).ToList();
        double[] middle = [.. axes.Select(axis => shared.Average(bake => axis.Of(bake)!.Value))];
        var way = Share(hulls, middle, house);
        return new BakedRegion(axes, hulls, way >= 1 ? house : Along(middle, house, way * JustInside), way >= 1);
    }

    /// <summary>The settings that a model's terms are made of.</summary>
    public static IReadOnlyList<Measure> AxesOf(FittedModel model) =>
        [.. model.Selection.Terms.SelectMany(term => term.Causes).Select(cause => cause.Measure).Distinct()];

    /// <summary>Whether a place is among the doughs baked.</summary>
    public bool Holds(double[] place) => Share(_hulls, Anchor, place) >= 1;

    /// <summary>The place, or the one nearest to it on the line to the house formula that is among the doughs baked.</summary>
    public double[] Pull(double[] place)
    {
        var share = Share(_hulls, Anchor, place);
        return share >= 1 ? place : Along(Anchor, place, share * JustInside);
    }

    /// <summary>The place a share of the way from one to another.</summary>
    public static double[] Along(double[] from, double[] to, double share) => [.. from.Zip(to, (a, b) => a + (share * (b - a)))];

    private static double Share(IReadOnlyList<(int[] Axes, ConvexRegion Hull)> hulls, double[] from, double[] to) =>
        hulls.Min(hull => hull.Hull.Reach([.. hull.Axes.Select(axis => from[axis])], [.. hull.Axes.Select(axis => to[axis])]) ?? 0);
}
