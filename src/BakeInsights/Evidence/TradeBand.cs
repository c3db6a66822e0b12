using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The range in which the trade expects a term of the rise-time model to lie.</summary>
/// <param name="Term">The term.</param>
/// <param name="Low">The lower end, in the term's unit.</param>
/// <param name="High">The upper end, in the term's unit.</param>
/// <param name="Source">Where the range comes from.</param>
internal sealed record TradeBand(string Term, double Low, double High, string Source)
{
    /// <summary>The bands, by term.</summary>
    public static IReadOnlyList<TradeBand> All { get; } =
    [
        // Between Q10 = 1.65 and 3.7; the trade's own figure of 10 % a degree is -0.0953.
        new(RiseTime.DoughTemperatureTerm, -0.13, -0.05,
            "trade articles' 10 % a degree, and growth rates of sourdough yeast (Gänzle et al. 1998)"),
        new(RiseTime.HydrationTerm, -0.02, 0, "common practice: slack doughs rise a little faster"),
        new(RiseTime.LogYeastTerm, -1.0, -0.6, "common practice: time goes inversely with yeast, less so in long rises"),
        new(RiseTime.SaltTerm, 0, 0.15, "common practice: salt slows yeast"),
        new(RiseTime.SugarTerm, 0, 0.05, "common practice: much sugar slows yeast"),
    ];

    /// <summary>The middle of the band.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Half of the band's width.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Whether an estimate lies in the band.</summary>
    public bool Contains(double estimate) => Low <= estimate && estimate <= High;

    /// <summary>Whether an interval has a part in the band.</summary>
    public bool IsReachedBy(Interval interval) => interval.Low <= High && Low <= interval.High;
}
