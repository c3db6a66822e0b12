using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A measure in two months: each month's bakes and mean, and the difference that the review judges.</summary>
/// <param name="Before">The month before.</param>
/// <param name="Now">The month.</param>
/// <param name="Difference">The answer about the difference, judged in the review's family.</param>
public sealed record MonthPair(MonthMean Before, MonthMean Now, Finding Difference)
{
    /// <summary>The pair of a comparison; null where its question stayed open.</summary>
    internal static MonthPair? Of(Comparison about, TwoMonths months, FindingFamily family)
    {
        if (family.Answers.FirstOrDefault(answer => answer.Name == MonthBefore.Prefix + about.Name) is not { } difference)
        {
            return null;
        }

        var used = difference.Bakes.ToHashSet();
        return MonthMean.Of(months.Before!, about, [.. months.BakesBefore.Where(used.Contains)]) is { } before
            && MonthMean.Of(months.Month, about, [.. months.Bakes.Where(used.Contains)]) is { } now
            ? new MonthPair(before, now, difference)
            : null;
    }
}

/// <summary>A measure in one month.</summary>
/// <param name="Month">The month, as 2026-10.</param>
/// <param name="Bakes">The bakes that count.</param>
/// <param name="Values">The value of each as it counts, in the measure's canonical unit.</param>
/// <param name="Mean">
/// Their mean, of times that of the logarithms, with its 95 % interval by Student's t; an end is null where the bakes don't
/// differ.
/// </param>
public sealed record MonthMean(string Month, IReadOnlyList<Bake> Bakes, IReadOnlyList<double> Values, Estimate Mean)
{
    internal static MonthMean? Of(string month, Comparison about, IReadOnlyList<Bake> bakes)
    {
        double[] values = [.. bakes.Select(about.ValueOf)];
        if (values.Length < MonthBefore.LeastBakes)
        {
            return null;
        }

        var moments = SampleMoments.Of(values);
        Estimate mean = new(moments.Mean, null, null);
        if (moments.StandardDeviation is { } sd and > 0)
        {
            mean = Estimate.Of(new Term("mean", moments.Mean, sd / Math.Sqrt(values.Length), values.Length - 1));
        }

        return new MonthMean(month, bakes, [.. values.Select(about.Scale.Back)], mean.Through(about.Scale.Back));
    }
}
