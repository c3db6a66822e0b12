using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// Asks whether the rise time changed from the month before once the doughs are made alike: the model of rise time over
/// both months, with one term more that tells the months apart. Its p value is that term's Student t, exact under the
/// model's own assumptions.
/// </summary>
internal static class AdjustedRiseTime
{
    private const string Name = "rise_time";
    private const string MonthColumn = "month";
    private const string Odd = "its rise lies far from what the dough's settings lead to expect";

    private const string Words = "Did doughs with the same settings rise faster or slower than in the month before?";

    /// <summary>Asks it.</summary>
    public static void Ask(Asked asked, TwoMonths months)
    {
        if (months.Before is null)
        {
            asked.Add(MonthBefore.OpenOf(Name, Words, months, null));
            return;
        }

        if (!RiseTime.Ask([.. months.BakesBefore, .. months.Bakes]).TryGet(out var answer, out var problem))
        {
            asked.Add(MonthBefore.OpenOf(Name, Words, months, $"{problem.Message} {problem.Remedy}"));
            return;
        }

        var month = months.Bakes.ToHashSet();
        var isNow = answer.Used.Select(month.Contains).ToArray();
        var now = isNow.Count(one => one);
        if (Math.Min(now, isNow.Length - now) < MonthBefore.LeastBakes)
        {
            asked.Add(MonthBefore.OpenOf(Name, Words, months, FormattableString.Invariant(
                $"{isNow.Length - now} bakes of {months.Before} and {now} of {months.Month} can speak to it, and each month takes {MonthBefore.LeastBakes}.")));
            return;
        }

        int[] rows = [.. Enumerable.Range(0, isNow.Length)];
        if (!Fit(answer.Fit, isNow, rows).TryGet(out var fit, out var unfit) || fit.Terms[^1].PValue is not { } p)
        {
            asked.Add(MonthBefore.OpenOf(Name, Words, months, unfit is { Kind: FitProblemKind.DependentColumn }
                ? "The settings changed together with the month, so the journal can't tell the month from them."
                : unfit?.Message ?? "There is no spread to compare with."));
            return;
        }

        var typical = answer.At(answer.Typical).Estimate;
        var change = Estimate.Of(fit.Terms[^1]);
        var odd = OddValues.Of(answer.Used, fit.Residuals, Odd);
        asked.Add(new Finding
        {
            Name = MonthBefore.Prefix + Name,
            Question = Words,
            Result = Measures.RiseTime,
            Contrast = Contrast.Between($"{months.Month} against {months.Before}, doughs made alike"),
            Effect = RiseTime.Question.Scale.Difference(change, typical),
            EffectPct = RiseTime.Question.Scale.Percent(change),
            PValue = p,
            Bakes = answer.Used,
            LeftOut = answer.LeftOutBakes,
            OddBakes = odd,
            WithoutOddBakes = Without(answer, isNow, odd, typical),
            Caveats = [$"Made alike by the model: {answer.Model}."],
            NextStep = "Look at what the model doesn't know: flour, age of the yeast, the place it rises in, who looked.",
        });
    }

    private static Estimate? Without(RiseTimeAnswer answer, bool[] isNow, IReadOnlyList<OddBake> odd, double typical)
    {
        var odds = odd.Select(one => one.Bake).ToHashSet();
        int[] rows = [.. Enumerable.Range(0, isNow.Length).Where(row => !odds.Contains(answer.Used[row]))];
        var now = rows.Count(row => isNow[row]);
        return odd.Count > 0 && Math.Min(now, rows.Length - now) >= MonthBefore.LeastBakes
            && Fit(answer.Fit, isNow, rows).TryGet(out var fit, out _)
            ? RiseTime.Question.Scale.Difference(Estimate.Of(fit.Terms[^1]), typical)
            : null;
    }

    private static Attempt<LeastSquaresFit> Fit(LeastSquaresFit model, bool[] isNow, int[] rows) => LeastSquares.Fit(
        new Design(
        [
            .. model.Design.Columns.Select(column => new DesignColumn(column.Name, [.. rows.Select(row => column.Values[row])])),
            new DesignColumn(MonthColumn, [.. rows.Select(row => isNow[row] ? 1.0 : 0)]),
        ]),
        [.. rows.Select(row => model.Response[row])],
        model.Weights is { } weights ? [.. rows.Select(row => weights[row])] : null);
}
