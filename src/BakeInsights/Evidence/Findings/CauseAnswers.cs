using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Answers the questions about causes, each by the model of its result, the other causes held still.</summary>
public sealed class CauseAnswers
{
    private CauseAnswers(IReadOnlyList<Finding> answers, IReadOnlyList<OpenQuestion> open)
    {
        Answers = answers;
        Open = open;
    }

    /// <summary>The answers, not yet judged (<see cref="FindingFamily.Judge"/>).</summary>
    public IReadOnlyList<Finding> Answers { get; }

    /// <summary>The questions that these bakes can't answer.</summary>
    public IReadOnlyList<OpenQuestion> Open { get; }

    /// <summary>What moved first rise, proof and loaf volume in these bakes.</summary>
    public static CauseAnswers Of(IReadOnlyList<Bake> bakes)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        List<Finding> answers = [];
        List<OpenQuestion> open = [];
        foreach (var sameModel in CauseQuestion.All.GroupBy(question => question.Model))
        {
            var model = FittedModel.Make(sameModel.Key, bakes);
            foreach (var question in sameModel)
            {
                if (!model.TryGet(out var fitted, out var problem))
                {
                    open.Add(new OpenQuestion(question.Name, question.Words, problem.Message, problem.Remedy));
                }
                else if (question.Terms.All(term => fitted.Coefficient(term) is null))
                {
                    open.Add(Unsupported(question, fitted));
                }
                else
                {
                    answers.Add(Answer(question, fitted, bakes));
                }
            }
        }

        return new CauseAnswers(answers, open);
    }

    private static Finding Answer(CauseQuestion question, FittedModel model, IReadOnlyList<Bake> bakes)
    {
        var effect = CauseEffect.Of(question, model, DoughSettings.MiddleOf(model.Ranges))!;
        var odd = OddBakes.Of(model);
        var without = odd.Count == 0 ? null : Without(question, model, bakes, odd);
        var together = MovedTogether.With(
            question.Step.Cause.Measure,
            question.Model.Candidates.SelectMany(term => term.Causes).Select(cause => cause.Measure).Distinct(),
            model.Selection.Bakes);
        return new Finding
        {
            Name = question.Name,
            Question = question.Words,
            Result = question.Model.Result,
            Contrast = question.IsAboutTheBend ? Contrast.Between("a step to either side, against a straight line") : question.Step.Contrast,
            Effect = effect.Step,
            EffectPct = effect.StepPct,
            Bend = effect.Bend,
            PValue = PValue(question, (LeastSquaresFit)model.Fit),
            Bakes = model.Selection.Bakes,
            LeftOut = model.LeftOutBakes,
            OddBakes = odd,
            WithoutOddBakes = without?.Step,
            BendWithoutOddBakes = without?.Bend,
            MovedTogetherWith = together,
            Caveats = [.. Caveats(model)],
            NextStep = NextStep(question, together, odd),
        };
    }

    // The same dough as before, so that only the bakes differ.
    private static CauseEffect? Without(CauseQuestion question, FittedModel model, IReadOnlyList<Bake> bakes, IReadOnlyList<OddBake> odd) =>
        FittedModel.Make(question.Model, [.. bakes.Except(odd.Select(one => one.Bake))]).Match(
            rest => CauseEffect.Of(question, rest, DoughSettings.MiddleOf(model.Ranges)),
            _ => null);

    private static double PValue(CauseQuestion question, LeastSquaresFit fit)
    {
        var tested = fit.Terms.Where(term => question.Terms.Contains(term.Name)).ToList();
        if (tested.Count == 1)
        {
            return tested[0].PValue ?? 0;
        }

        var smaller = new Design([.. fit.Design.Columns.Where(column => !question.Terms.Contains(column.Name))]);
        return LeastSquares.Compare(LeastSquares.Fit(smaller, fit.Response).Value, fit).PValue ?? 0;
    }

    private static OpenQuestion Unsupported(CauseQuestion question, FittedModel model) => new(
        question.Name,
        question.Words,
        string.Join(" ", model.Selection.LeftOutTerms.Where(left => question.Terms.Contains(left.Name)).Select(left => left.Reason).Distinct()),
        NextStep(question, [], []));

    private static IEnumerable<string> Caveats(FittedModel model)
    {
        if (model.Basis.Cups > 0)
        {
            yield return $"{model.Basis.Cups} of {model.Basis.Used} bakes had their flour by the cup: the scatter that this brings is part of the "
                + "interval, and the cause is that of the nominal cup.";
        }

        foreach (var block in model.EntangledBlocks)
        {
            yield return $"Each {block.Words} kept to its own settings, so the {block.Words} may be behind it.";
        }
    }

    private static string NextStep(CauseQuestion question, IReadOnlyList<Measure> together, IReadOnlyList<OddBake> odd) =>
        together.Count > 0 ? $"Bake some doughs that change {Name(question.Step.Cause.Measure)} and leave {string.Join(" and ", together.Select(Name))} as it is."
        : odd.Count > 0 ? $"Look at {string.Join(", ", odd.Select(one => one.Bake.Id))} again, or bake {(odd.Count == 1 ? "it" : "them")} once more."
        : $"Bake pairs of doughs that differ in {Name(question.Step.Cause.Measure)} alone, by a step or two to each side of the usual.";

    private static string Name(Measure measure) => char.ToLowerInvariant(measure.Title[0]) + measure.Title[1..];
}
