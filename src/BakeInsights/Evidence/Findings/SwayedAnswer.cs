using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How far an answer about a cause hangs on single bakes.</summary>
/// <param name="Question">The question, one sentence.</param>
/// <param name="Result">The measure that it is about.</param>
/// <param name="Contrast">What is compared.</param>
/// <param name="Bakes">The bakes behind it.</param>
/// <param name="All">The effect with all bakes, in the result's canonical unit.</param>
/// <param name="Without">The effect without each of the bakes that sway the model most, in the order of the journal.</param>
public sealed record SwayedAnswer(
    string Question, Measure Result, Contrast Contrast, IReadOnlyList<Bake> Bakes, Estimate All, IReadOnlyList<SwayingBake> Without)
{
    /// <summary>
    /// How many bakes are looked at where fewer are odd: those with the largest Cook's distance. Our own choice.
    /// </summary>
    public const int LeastBakes = 3;

    /// <summary>
    /// Asks a question about a cause (<see cref="CauseAnswers"/>) again without each odd bake, and without those with the
    /// largest Cook's distance (Cook 1977, Technometrics 19, 15-18).
    /// </summary>
    /// <param name="bakes">The bakes.</param>
    /// <param name="question">The name of the answer, such as <c>rise_time.dough_temperature</c>.</param>
    /// <returns>The answers, or the problem that stood in the way of the one with all bakes.</returns>
    /// <exception cref="ArgumentException">No question about a cause has that name.</exception>
    public static Attempt<SwayedAnswer> Of(IReadOnlyList<Bake> bakes, string question)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var asked = CauseQuestion.All.FirstOrDefault(one => one.Name == question)
            ?? throw new ArgumentException($"No question about a cause is named {question}.", nameof(question));
        if (!FittedModel.Make(asked.Model, bakes).TryGet(out var model, out var problem))
        {
            return problem;
        }

        var typical = DoughSettings.MiddleOf(model.Ranges);
        if (CauseEffect.Of(asked, model, typical) is not { } effect || model.Fit is not LeastSquaresFit fit)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows, [asked.Step.Cause.Measure.Name], $"These bakes can't say what {asked.Step.Cause.Measure.Words} does.",
                $"Bake doughs that differ in {asked.Step.Cause.Measure.Words}.");
        }

        var odd = OddBakes.Of(model).Select(one => one.Bake).ToHashSet();
        var distances = RowInfluence.Of(fit).ToDictionary(row => model.Selection.Bakes[row.Row], row => row.CooksDistance);
        var looked = distances.OrderByDescending(pair => odd.Contains(pair.Key)).ThenByDescending(pair => pair.Value)
            .Take(Math.Max(LeastBakes, odd.Count)).Select(pair => pair.Key).ToHashSet();
        return new SwayedAnswer(
            asked.Words,
            asked.Model.Result,
            asked.IsAboutTheBend ? Contrast.Between("a step to either side, against a straight line") : asked.Step.Contrast,
            model.Selection.Bakes,
            effect.Step,
            [
                .. model.Selection.Bakes.Where(looked.Contains).Select(bake => new SwayingBake(
                    bake,
                    odd.Contains(bake),
                    FittedModel.Make(asked.Model, [.. bakes.Where(other => other != bake)])
                        .Match(rest => CauseEffect.Of(asked, rest, typical)?.Step, _ => null))),
            ]);
    }
}

/// <summary>A bake that an answer was asked without.</summary>
/// <param name="Bake">The bake.</param>
/// <param name="IsOdd">Whether it counts as odd (docs/findings.md).</param>
/// <param name="Effect">The effect without it, of the same dough as with all; null where the others can't tell.</param>
public sealed record SwayingBake(Bake Bake, bool IsOdd, Estimate? Effect);
