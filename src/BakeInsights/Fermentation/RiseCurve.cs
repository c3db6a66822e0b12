namespace BakeInsights;

/// <summary>How far a dough has risen, minute by minute: a lag, a steepest rise, a ceiling.</summary>
/// <remarks>
/// The rise is volume / volume at the start - 1, so 1 means doubled. Both curves are those of Zwietering, Jongenburger,
/// Rombouts and van 't Riet 1990, Appl. Environ. Microbiol. 56:1875-1881 (exact forms from memory), made for the
/// logarithm of cell counts and used for dough since (Romano et al. 2007, J. Food Eng. 83:142-148, Gompertz). They end
/// at a ceiling: a dough that falls after its peak is described only up to there.
/// </remarks>
public abstract record RiseCurve
{
    private protected RiseCurve(double ceiling, double steepestPerMin, double lagMin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ceiling);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(steepestPerMin);
        if (!double.IsFinite(lagMin))
        {
            throw new ArgumentOutOfRangeException(nameof(lagMin), lagMin, "A lag is a finite number.");
        }

        Ceiling = ceiling;
        SteepestPerMin = steepestPerMin;
        LagMin = lagMin;
    }

    /// <summary>What the curve is called.</summary>
    public abstract string Name { get; }

    /// <summary>The rise that the curve tends to.</summary>
    public double Ceiling { get; }

    /// <summary>The greatest slope, in rise for each minute.</summary>
    public double SteepestPerMin { get; }

    /// <summary>Minutes until the tangent at the steepest point leaves zero.</summary>
    public double LagMin { get; }

    /// <summary>Minutes until the rise is steepest.</summary>
    public abstract double SteepestAtMin { get; }

    /// <summary>Minutes until the dough has doubled; null when its ceiling is below that.</summary>
    public double? DoublingMin => MinutesTo(1);

    /// <summary>The rise after so many minutes.</summary>
    public abstract double Rise(double minutes);

    /// <summary>The slope after so many minutes, in rise for each minute.</summary>
    public abstract double Slope(double minutes);

    /// <summary>
    /// Minutes until a rise is reached, more than 0; null when the ceiling is at or below it. Less than zero for rises
    /// that the curve has before it starts.
    /// </summary>
    public double? MinutesTo(double rise)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rise);
        return rise < Ceiling ? MinutesBelowCeiling(rise) : null;
    }

    private protected abstract double MinutesBelowCeiling(double rise);
}
