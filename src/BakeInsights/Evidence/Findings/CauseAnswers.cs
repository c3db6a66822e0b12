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
            var model = FittedModel.Make(sameModel.Key, bakes).Select(fitted => new Answering(fitted, bakes));
            foreach (var question in sameModel)
            {
                if (!model.TryGet(out var answering, out var problem))
                {
                    open.Add(new OpenQuestion(question.Name, question.Words, problem.Message, problem.Remedy));
                }
                else if (question.Terms.All(term => answering.Model.Coefficient(term) is null))
                {
                    open.Add(Unsupported(question, answering.Model));
                }
                else
                {
                    answers.Add(answering.To(question));
                }
            }
        }

        return new CauseAnswers(answers, open);
    }

    /// <summary>A model with what all of its questions share.</summary>
    private sealed class Answering
    {
        private readonly IReadOnlyList<OddBake> _odd;
        private readonly FittedModel? _withoutOdd;
        private readonly DoughSettings _typical;

        public Answering(FittedModel model, IReadOnlyList<Bake> bakes)
        {
            Model = model;
            _typical = DoughSettings.MiddleOf(model.Ranges);
            _odd = OddBakes.Of(model);
            _withoutOdd = _odd.Count == 0
                ? null
                : FittedModel.Make(model.Question, [.. bakes.Except(_odd.Select(one => one.Bake))]).Match<FittedModel?>(rest => rest, _ => null);
        }

        public FittedModel Model { get; }

        public Finding To(CauseQuestion question)
        {
            var effect = CauseEffect.Of(question, Model, _typical)!;

            // Of the same dough as with all bakes, so that only the bakes differ.
            var without = _withoutOdd is null ? null : CauseEffect.Of(question, _withoutOdd, _typical);
            var together = MovedTogether.With(
                question.Step.Cause.Measure,
                question.Model.Candidates.SelectMany(term => term.Causes).Select(cause => cause.Measure).Distinct(),
                Model.Selection.Bakes);
            return new Finding
            {
                Name = question.Name,
                Question = question.Words,
                Result = question.Model.Result,
                Contrast = question.IsAboutTheBend ? Contrast.Between("a step to either side, against a straight line") : question.Step.Contrast,
                Effect = effect.Step,
                EffectPct = effect.StepPct,
                Bend = effect.Bend,
                PValue = PValue(question, (LeastSquaresFit)Model.Fit),
                Weight = question.Weight,
                Bakes = Model.Selection.Bakes,
                LeftOut = Model.LeftOutBakes,
                OddBakes = _odd,
                WithoutOddBakes = without?.Step,
                BendWithoutOddBakes = without?.Bend,
                MovedTogetherWith = together,
                Caveats = [.. Caveats(Model)],
                NextStep = NextStep(question, together, _odd),
            };
        }
    }

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
            yield return block.Caveat;
        }
    }

    private static string NextStep(CauseQuestion question, IReadOnlyList<Measure> together, IReadOnlyList<OddBake> odd) =>
        together.Count > 0 ? $"Bake some doughs that change {question.Step.Cause.Measure.Words} and leave {string.Join(" and ", together.Select(measure => measure.Words))} as it is."
        : odd.Count > 0 ? $"Look at {string.Join(", ", odd.Select(one => one.Bake.Id))} again, or bake {(odd.Count == 1 ? "it" : "them")} once more."
        : $"Bake pairs of doughs that differ in {question.Step.Cause.Measure.Words} alone, by a step or two to each side of the usual.";
}
