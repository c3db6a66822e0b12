using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Compares two ways in one result.</summary>
internal static class WaysResult
{
    // Two one-sided tests of 5 % each.
    private const double EquivalenceLevel = 0.9;

    /// <summary>The comparison, with as many blocks as the bakes can bear.</summary>
    public static Attempt<ResultCompared> Of(WaysSplit split, WaysWish wish, Measure result)
    {
        var question = ResultQuestion.Of(result);
        var able = question.Exclusions.Aggregate(split.Both, (left, exclusion) => exclusion.LeaveOut(left, []));
        var (first, second) = (able.Count(split.IsFirst), able.Count(bake => !split.IsFirst(bake)));
        if (Math.Min(first, second) < 2)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [result.Name],
                $"{Many(first)} of {split.First} and {Many(second)} of {split.Second} have a {question.Name} that can be used.",
                "It takes two of each at the least.");
        }

        IReadOnlyList<Measure>? held = split.IsOfFormulas ? [Measures.DoughTemperature] : null;
        var blocks = split.Blocks(able).ToList();
        while (true)
        {
            if (ColumnQuestion.Ask(able, result, split.Cells.Name, ColumnForm.Levels, blocks, held).TryGet(out var answer, out var problem)
                && answer.Levels.Count == 2)
            {
                return Compared(split, wish, answer, question.Scale, blocks);
            }

            if (blocks.Count == 0)
            {
                return problem ?? new FitProblem(FitProblemKind.TooFewGroups, [result.Name], "One of the two has too few bakes.", "Bake more of each.");
            }

            blocks.RemoveAt(blocks.Count - 1);
        }
    }

    private static ResultCompared Compared(WaysSplit split, WaysWish wish, ColumnAnswer answer, ResultScale scale, IReadOnlyList<string> blocks)
    {
        // Levels come in the order of names, and the fit has the later less the earlier.
        var isInOrder = answer.Levels[0].Level.Equals(split.First, StringComparison.OrdinalIgnoreCase);
        var (one, other) = isInOrder ? (answer.Levels[0], answer.Levels[1]) : (answer.Levels[1], answer.Levels[0]);
        var term = answer.Terms[^1];
        var turned = isInOrder ? term : term with { Estimate = -term.Estimate };
        Estimate At(double level)
        {
            var interval = turned.Interval(level);
            return new Estimate(turned.Estimate, interval.Low, interval.High);
        }

        var difference = scale.Difference(At(ModelAnswer.Level), one.Mean.Value);
        var narrow = At(EquivalenceLevel);
        var percent = scale.Percent(narrow) ?? Scaled(narrow, 100 / one.Mean.Value);
        var finding = answer.Finding with
        {
            Effect = difference,
            EffectPct = scale.Percent(At(ModelAnswer.Level)),
            Contrast = Contrast.Between($"{answer.ColumnTitle}: {split.Second} against {split.First}"),
        };
        return new ResultCompared(
            answer.Result, answer.ResultName, one.Count, other.Count, one.Mean, other.Mean, difference, percent,
            LikenessOf(difference, percent, wish.MarginPct), blocks, answer.HeldStill, answer.LeftOutTerms, finding);
    }

    private static Likeness LikenessOf(Estimate difference, Estimate percent, double margin)
    {
        var isDifferent = difference is { Low: > 0 } or { High: < 0 };
        var isInside = percent.Low > -margin && percent.High < margin;
        return (isDifferent, isInside) switch
        {
            (true, true) => Likeness.DifferentWithinMargin,
            (true, false) => Likeness.Different,
            (false, true) => Likeness.Alike,
            _ => Likeness.Unknown,
        };
    }

    private static Estimate Scaled(Estimate estimate, double factor) => factor > 0
        ? estimate.Through(value => value * factor)
        : new Estimate(estimate.Value * factor, estimate.High * factor, estimate.Low * factor);

    private static string Many(int bakes) => bakes == 1 ? "1 bake" : $"{bakes} bakes";
}
