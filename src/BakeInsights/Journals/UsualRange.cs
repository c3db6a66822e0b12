namespace BakeInsights;

/// <summary>A range that values of a column mostly lie in; one outside is kept and doubted.</summary>
/// <param name="Column">The column.</param>
/// <param name="Low">The smallest usual value, in the column's canonical unit.</param>
/// <param name="High">The largest usual value, in the column's canonical unit.</param>
public sealed record UsualRange(QuantityColumn Column, double Low, double High);
