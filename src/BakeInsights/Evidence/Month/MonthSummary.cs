using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The middle and the spread of a measure over a month, as one bake differs from the next.</summary>
/// <param name="Measure">The measure; its values are in its canonical unit.</param>
/// <param name="Mean">The mean with its 95 % interval (Student's t).</param>
/// <param name="Spread">The standard deviation of single bakes with its 95 % interval (chi-square).</param>
/// <param name="Bakes">The bakes behind it.</param>
/// <param name="LeftOut">The bakes that lack it.</param>
public sealed record MonthSummary(
    Measure Measure, Estimate Mean, Estimate Spread, IReadOnlyList<Bake> Bakes, IReadOnlyList<LeftOutBakes> LeftOut)
{
    /// <summary>Sums up a measure over bakes.</summary>
    /// <returns>The summary, or the problem that fewer than two bakes have the measure, or that none differs.</returns>
    public static Attempt<MonthSummary> Of(Measure measure, IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(bakes);
        var (used, leftOut) = Split(measure, bakes);
        if (used.Count < 2)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [measure.Name],
                $"{used.Count} of {bakes.Count} bakes have what the {measure.Words} takes, and two are the least.",
                $"Log what it takes: {measure.Formula}.");
        }

        var moments = SampleMoments.Of(used.Select(bake => measure.Of(bake)!.Value));
        if (moments.StandardDeviation is not ({ } sd and > 0))
        {
            return new FitProblem(
                FitProblemKind.NoSpread,
                [measure.Name],
                $"The {measure.Words} is the same in all {used.Count} bakes, so it has no spread to judge it by.",
                "Log it to one more digit.");
        }

        var mean = new Term("mean", moments.Mean, sd / Math.Sqrt(used.Count), used.Count - 1).Interval(ModelAnswer.Level);
        var spread = SpreadInterval.Of(sd, used.Count - 1, ModelAnswer.Level);
        return new MonthSummary(
            measure, new Estimate(moments.Mean, mean.Low, mean.High), new Estimate(sd, spread.Low, spread.High), used, leftOut);
    }

    /// <summary>The bakes that have a measure, and those that don't.</summary>
    internal static (IReadOnlyList<Bake> Used, IReadOnlyList<LeftOutBakes> LeftOut) Split(Measure measure, IReadOnlyList<Bake> bakes)
    {
        List<LeftOutBakes> leftOut = [];
        return (Exclusion.Without(measure).LeaveOut(bakes, leftOut), leftOut);
    }
}
