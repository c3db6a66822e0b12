namespace BakeInsights;

/// <summary>How evenly one dough was divided.</summary>
/// <param name="Bake">Which.</param>
/// <param name="Pieces">How many pieces were weighed, at least two.</param>
/// <param name="VariationPct">Their standard deviation in percent of their mean.</param>
public sealed record DividedBake(Bake Bake, int Pieces, double VariationPct);
