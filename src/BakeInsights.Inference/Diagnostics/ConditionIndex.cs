namespace BakeInsights.Inference;

/// <summary>One direction in which columns nearly depend on each other.</summary>
/// <param name="Index">The largest singular value over this one's, 1 or more.</param>
/// <param name="Shares">
/// By column, the share of the coefficient's variance that comes from this direction; over all directions the shares
/// of a column sum to 1.
/// </param>
public sealed record ConditionIndex(double Index, IReadOnlyList<double> Shares);
