using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How often the dough came out at the temperature it was meant to have.</summary>
/// <param name="TargetC">The temperature meant, in °C.</param>
/// <param name="Hits">The bakes within <see cref="ToleranceC"/> of it.</param>
/// <param name="Warmer">The bakes that were warmer than that.</param>
/// <param name="Colder">The bakes that were colder than that.</param>
/// <param name="HitPct">The percentage of hits with its 95 % interval (Clopper and Pearson).</param>
/// <param name="LeftOut">The bakes without a dough temperature.</param>
public sealed record TargetHits(
    double TargetC,
    IReadOnlyList<Bake> Hits,
    IReadOnlyList<Bake> Warmer,
    IReadOnlyList<Bake> Colder,
    Estimate HitPct,
    IReadOnlyList<LeftOutBakes> LeftOut)
{
    /// <summary>How far off still counts as a hit, in °C: what a kitchen probe reads to. Common practice, no source.</summary>
    public const double ToleranceC = 1;

    // 25.1 less 24.1 is a little over 1 in binary.
    private const double Rounding = 1e-9;

    /// <summary>How many bakes were meant to hit.</summary>
    public int Count => Hits.Count + Warmer.Count + Colder.Count;

    /// <summary>Counts hits and misses; null when no bake has a dough temperature.</summary>
    public static TargetHits? Of(IReadOnlyList<Bake> bakes, Temperature target)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var (used, leftOut) = MonthSummary.Split(Measures.DoughTemperature, bakes);
        if (used.Count == 0)
        {
            return null;
        }

        double Off(Bake bake) => Measures.DoughTemperature.Of(bake)!.Value - target.C;
        List<Bake> hits = [.. used.Where(bake => Math.Abs(Off(bake)) <= ToleranceC + Rounding)];
        var ends = ShareInterval.Of(hits.Count, used.Count, ModelAnswer.Level);
        return new TargetHits(
            target.C,
            hits,
            [.. used.Except(hits).Where(bake => Off(bake) > 0)],
            [.. used.Except(hits).Where(bake => Off(bake) < 0)],
            new Estimate(100.0 * hits.Count / used.Count, 100 * ends.Low, 100 * ends.High),
            leftOut);
    }
}
