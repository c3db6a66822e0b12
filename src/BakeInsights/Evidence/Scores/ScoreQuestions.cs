using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Answers the questions about one attribute.</summary>
internal sealed class ScoreQuestions(ScoreTable table, Attempt<JudgesAgreement> agreement, IReadOnlyList<Bake> bakes)
{
    private const string NotFromHere = "A straight line: a best value in between would not show.";

    private bool IsMiddle => table.Kind == AttributeKind.MiddleIsBest;

    // How far the mean bake lies above the middle of the scale; null where the middle isn't best or nothing was scored.
    private double? AboveMiddle => IsMiddle && table.Rows.Count > 0 ? table.Rows.Average(row => row.Rating) - Middle : null;

    private double Middle => (table.Scale!.Low + table.Scale.High) / 2;

    /// <summary>The answers and the questions left open.</summary>
    public (IReadOnlyList<Finding> Answers, IReadOnlyList<OpenQuestion> Open) Ask()
    {
        if (agreement.TryGet(out var judges, out _) && judges.Verdict == AgreementVerdict.TooLittle)
        {
            return ([], [.. Names.Select(Disagreed)]);
        }

        List<Finding> answers = [];
        List<OpenQuestion> open = [];
        if (IsMiddle)
        {
            AskMiddle(answers, open);
        }

        var model = ScoreModel.Make(table, bakes);
        foreach (var cause in ScoreCause.All)
        {
            var (name, words) = NameOf(cause);
            if (!model.TryGet(out var fitted, out var problem))
            {
                open.Add(new OpenQuestion(name, words, problem.Message, problem.Remedy));
            }
            else if (ScoreEffect.Of(fitted, cause, table) is { } effect)
            {
                answers.Add(Answer(cause, fitted, effect));
            }
            else
            {
                var reason = fitted.Selection.LeftOutTerms.First(left => left.Name == cause.Name).Reason;
                open.Add(new OpenQuestion(name, words, reason, Pairs(cause)));
            }
        }

        return (answers, open);
    }

    private IEnumerable<(string Name, string Words)> Names =>
        [.. IsMiddle ? [MiddleName] : Array.Empty<(string, string)>(), .. ScoreCause.All.Select(NameOf)];

    private (string Name, string Words) MiddleName => ($"{table.Name}.middle", $"Which way off the middle of its scale was the {table.Noun}?");

    private (string Name, string Words) NameOf(ScoreCause cause) => (
        $"{table.Name}.{cause.Name}",
        IsMiddle
            ? $"Did the {table.Noun} move up or down its scale {cause.Step.More}?"
            : $"Did the {table.Noun} score higher or lower {cause.Step.More}?");

    private OpenQuestion Disagreed((string Name, string Words) question) => new(
        question.Name,
        question.Words,
        $"The judges agree too little about the {table.Noun}: at least half of what their mean scores tell apart is the judges' own.",
        "Score three slices together and settle what each score means; then score the next bakes apart again.");

    private void AskMiddle(List<Finding> answers, List<OpenQuestion> open)
    {
        var (name, words) = MiddleName;
        if (table.Rows.Count < JudgeTable.LeastBakes)
        {
            open.Add(new OpenQuestion(
                name, words, $"The {table.Noun} was scored in {table.Rows.Count} of {bakes.Count} bakes, and {JudgeTable.LeastBakes} are needed.",
                $"Score the {table.Noun} of the next bakes."));
            return;
        }

        var off = ScoreEffect.Mean([.. table.Rows.Select(row => row.Rating)], Middle, table);
        Bake[] unscored = [.. bakes.Where(bake => table.RowOf(bake) is null)];
        answers.Add(new Finding
        {
            Name = name,
            Question = words,
            Result = table.Measure,
            Contrast = Contrast.Between("the mean bake against the middle of the scale"),
            Effect = Estimate.Of(off),
            PValue = off.PValue ?? 1,
            Bakes = [.. table.Rows.Select(row => row.Bake)],
            LeftOut = unscored.Length == 0 ? [] : [new LeftOutBakes($"no {table.Noun} score", unscored)],
            Caveats = [.. AgreementCaveats(), "It is what these judges found: others may set the middle elsewhere."],
            NextStep = $"Score a loaf that you call just right for its {table.Noun}, among the others, and see whether it gets the middle.",
        });
    }

    private Finding Answer(ScoreCause cause, FittedModel model, Term effect)
    {
        var (name, words) = NameOf(cause);
        var odd = OddBakes.Of(model);
        var without = odd.Count == 0 ? null : ScoreModel.Make(table, [.. bakes.Except(odd.Select(one => one.Bake))])
            .Match(rest => ScoreEffect.Of(rest, cause, table), _ => null);
        var together = MovedTogether.With(
            cause.Step.Cause.Measure, ScoreCause.All.Select(other => other.Step.Cause.Measure), model.Selection.Bakes);
        return new Finding
        {
            Name = name,
            Question = words,
            Result = table.Measure,
            Contrast = cause.Step.Contrast,
            Effect = Estimate.Of(effect),
            PValue = effect.PValue ?? 1,
            Bakes = model.Selection.Bakes,
            LeftOut = model.LeftOutBakes,
            OddBakes = odd,
            WithoutOddBakes = without is null ? null : Estimate.Of(without),
            MovedTogetherWith = together,
            Caveats = [.. AgreementCaveats(), .. Caveats(cause, model, effect)],
            NextStep = NextStep(cause, effect, together, odd),
        };
    }

    private IEnumerable<string> AgreementCaveats()
    {
        if (!agreement.TryGet(out var judges, out var problem))
        {
            yield return problem.Message;
        }
        else if (judges.Verdict == AgreementVerdict.Unsettled)
        {
            yield return $"How far the judges agree about the {table.Noun} is not settled: it may be too little.";
        }
    }

    private IEnumerable<string> Caveats(ScoreCause cause, FittedModel model, Term effect)
    {
        if (table.Kind is null)
        {
            yield return "The journal doesn't say which score is best, so higher is only higher.";
        }

        if (!IsMiddle)
        {
            yield return NotFromHere;
        }

        if (model.Basis.Cups > 0)
        {
            yield return $"{model.Basis.Cups} of {model.Basis.Used} bakes had their flour by the cup, so their hydration is only about right.";
        }

        foreach (var block in model.EntangledBlocks)
        {
            yield return block.Caveat;
        }

        if (effect.PValue <= FindingFamily.FalseFindingChance && OrderOnly.LeansOtherWay(model, cause, table, effect.Estimate))
        {
            yield return "Taken as an order only, the scores lean the other way: it hangs on the steps of the scale being equal.";
        }
    }

    private string NextStep(ScoreCause cause, Term effect, IReadOnlyList<Measure> together, IReadOnlyList<OddBake> odd)
    {
        if (together.Count > 0)
        {
            var others = ScoreCause.All.Where(other => together.Contains(other.Step.Cause.Measure)).Select(other => other.Step.Cause.Measure.Words);
            return $"Bake some doughs that change the {cause.Step.Cause.Measure.Words} and leave the {string.Join(" and the ", others)} as it is.";
        }

        if (odd.Count > 0)
        {
            return $"Look at {string.Join(", ", odd.Select(one => one.Bake.Id))} again, or bake {(odd.Count == 1 ? "it" : "them")} once more.";
        }

        return effect.PValue <= FindingFamily.FalseFindingChance && AboveMiddle is { } above and not 0
            ? $"Bake pairs that differ in {cause.Step.Cause.Measure.Words} alone, the second with {(Math.Sign(above) == Math.Sign(effect.Estimate) ? "less" : "more")} of it: "
                + "if the answer holds, that leads toward the middle."
            : Pairs(cause);
    }

    private static string Pairs(ScoreCause cause) =>
        $"Bake pairs of doughs that differ in {cause.Step.Cause.Measure.Words} alone, and let the same judges score both without knowing which is which.";
}
