using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Asks whether a measure went up or down through a month: the slope of a straight line over its days.</summary>
/// <remarks>
/// Least squares; the p value of the slope is exact where bakes scatter about the line independently and normally.
/// </remarks>
internal static class MonthDrift
{
    private static readonly int LeastBakes = TermSelection.BakesNeeded(1);

    private const string Odd = "far from the month's line";

    /// <summary>Asks it of a measure.</summary>
    public static void Ask(Asked asked, string name, Measure measure, IReadOnlyList<Bake> bakes, string nextStep)
    {
        var question = $"Did the {measure.Words} drift through the month?";
        var (used, leftOut) = MonthSummary.Split(measure, bakes);
        if (used.Count < LeastBakes || DaysOf(used) == 0)
        {
            asked.Add(new OpenQuestion(
                name,
                question,
                used.Count < LeastBakes
                    ? $"{MonthWords.Bakes(used.Count)} of the month {(used.Count == 1 ? "has" : "have")} it, and {LeastBakes} are the least for a drift."
                    : "All the bakes that have it are of one day.",
                $"Log, in each bake of the month, what it takes: {measure.Formula}."));
            return;
        }

        if (!LineOf(measure, used).TryGet(out var line, out var problem) || Drift(line, 1).PValue is not { } p)
        {
            asked.Add(new OpenQuestion(
                name, question, problem?.Message ?? "The values lie on a line without any scatter.", "Log it to one more digit."));
            return;
        }

        var days = DaysOf(used);
        var odd = OddValues.Of(used, line.Residuals, Odd);
        asked.Add(new Finding
        {
            Name = name,
            Question = question,
            Result = measure,
            Contrast = Contrast.Between(FormattableString.Invariant($"the month's last bake against its first, {days} days earlier")),
            Effect = Estimate.Of(Drift(line, days)),
            PValue = p,
            Bakes = used,
            LeftOut = leftOut,
            OddBakes = odd,
            WithoutOddBakes = Without(measure, used, odd, days),
            Caveats = ["A straight line through the month; a step, or a rise and fall, shows in the chart."],
            NextStep = nextStep,
        });
    }

    private static Estimate? Without(Measure measure, IReadOnlyList<Bake> used, IReadOnlyList<OddBake> odd, int days)
    {
        List<Bake> rest = [.. used.Except(odd.Select(one => one.Bake))];
        return odd.Count > 0 && rest.Count >= LeastBakes && DaysOf(rest) > 0 && LineOf(measure, rest).TryGet(out var line, out _)
            ? Estimate.Of(Drift(line, days))
            : null;
    }

    private static Attempt<LeastSquaresFit> LineOf(Measure measure, IReadOnlyList<Bake> bakes)
    {
        var start = bakes.Min(bake => bake.BakedOn).DayNumber;
        return LeastSquares.Fit(
            new Design(
            [
                new DesignColumn(FittedModel.Intercept, [.. bakes.Select(_ => 1.0)]),
                new DesignColumn("day", [.. bakes.Select(bake => (double)(bake.BakedOn.DayNumber - start))]),
            ]),
            [.. bakes.Select(bake => measure.Of(bake)!.Value)]);
    }

    private static Term Drift(LeastSquaresFit line, int days) => line.Combination([0, days]);

    private static int DaysOf(IReadOnlyList<Bake> bakes) =>
        bakes.Max(bake => bake.BakedOn).DayNumber - bakes.Min(bake => bake.BakedOn).DayNumber;
}
