namespace BakeInsights;

/// <summary>Whether a day fits into the hours there are.</summary>
/// <param name="OverMin">By how many minutes it does not, reckoned with the latest; 0 when it fits.</param>
/// <param name="RiseThatFitsMin">
/// The first rise that would make it fit, in minutes, its spread in proportion, with which <see cref="YeastForTime"/> and
/// the kitchen's own fit find the yeast or the dough temperature; the usual rise where starting later is enough; null when
/// the day fits already, or no rise would be short enough.
/// </param>
public sealed record TimetableFit(double OverMin, double? RiseThatFitsMin)
{
    /// <summary>Whether it fits.</summary>
    public bool Fits => OverMin <= 0;
}
