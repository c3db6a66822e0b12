namespace BakeInsights;

/// <summary>What one cause does to one result.</summary>
/// <param name="Name">The fixed name.</param>
/// <param name="Words">The question, one sentence.</param>
/// <param name="Model">The model that answers it.</param>
/// <param name="Step">The step of the cause.</param>
/// <param name="Terms">The terms of the model that are tested together.</param>
internal sealed record CauseQuestion(string Name, string Words, Question Model, CauseStep Step, IReadOnlyList<string> Terms)
{
    // What a journal is kept for: dough temperature, hydration and yeast on rise time and loaf volume. Four, our own choice
    // before any journal was read, leaves each of them as clear in a family of thirty as in one of ten.
    private const double MainWeight = 4;

    /// <summary>What the question is given of the family's chance of a false finding (<see cref="Finding.Weight"/>).</summary>
    public double Weight =>
        (Model == RiseTime.Question || Model == LoafVolume.Question)
        && (Step.Cause == Cause.DoughTemperature || Step.Cause == Cause.Hydration || Step.Cause == Cause.Yeast)
            ? MainWeight
            : 1;

    /// <summary>Whether only the bend is asked about.</summary>
    public bool IsAboutTheBend => Terms is [Curve];

    private const string Curve = RiseTime.DoughTemperatureTerm + "_squared";
    private const string ProofTerm = "proof_time";

    /// <summary>The questions about the first rise, the proof and the loaf, in the order in which they are answered.</summary>
    public static IReadOnlyList<CauseQuestion> All { get; } = [.. Rise(), .. Proof(), .. Loaf()];

    private static IEnumerable<CauseQuestion> Rise()
    {
        foreach (var step in CauseStep.All.Where(step => RiseTime.Question.Candidates.Any(term => term.Causes[0] == step.Cause)))
        {
            yield return Time("rise_time", RiseTime.Question, step);
        }

        // Whether the straight line bends is looked for beside the line, so that the other answers are those of the fit.
        yield return new CauseQuestion(
            "rise_time.dough_temperature_curve",
            "Does a degree do more at one dough temperature than at another?",
            RiseTime.Question with
            {
                Candidates = [.. RiseTime.Question.Candidates, CandidateTerm.Square(Curve, "ln(min) per (°C)²", Cause.DoughTemperature)],
            },
            CauseStep.All.Single(step => step.Cause == Cause.DoughTemperature),
            [Curve]);
    }

    private static IEnumerable<CauseQuestion> Proof() =>
        CauseStep.All.Where(step => ProofTime.Question.Candidates.Any(term => term.Causes[0] == step.Cause))
            .Select(step => Time("proof_time", ProofTime.Question, step));

    private static IEnumerable<CauseQuestion> Loaf()
    {
        yield return Volume(LoafVolume.Question, Cause.Hydration, "Were loaves larger or smaller from a wetter dough?");
        yield return Volume(LoafVolume.Question, Cause.DoughTemperature, "Were loaves larger or smaller from a warmer dough?");
        yield return Volume(
            LoafVolume.Question with
            {
                Candidates =
                [
                    .. LoafVolume.Question.Candidates,
                    CandidateTerm.Line(ProofTerm, "mL/g per min", Cause.ProofTime),
                    CandidateTerm.Square(ProofTerm + "_squared", "mL/g per min²", Cause.ProofTime),
                ],
            },
            Cause.ProofTime,
            "Were loaves larger or smaller after a longer proof?");
    }

    private static CauseQuestion Time(string name, Question model, CauseStep step)
    {
        var term = model.Candidates.Single(candidate => candidate.Causes[0] == step.Cause);
        return new CauseQuestion(
            $"{name}.{NameOf(step.Cause)}",
            $"Was the {(model.Result == Measures.RiseTime ? "first rise" : "proof")} quicker or slower {step.More}?",
            model,
            step,
            [term.Name]);
    }

    private static CauseQuestion Volume(Question model, Cause cause, string words) => new(
        $"loaf_volume.{NameOf(cause)}",
        words,
        model,
        CauseStep.All.Single(step => step.Cause == cause),
        [.. model.Candidates.Where(term => term.Causes.Contains(cause)).Select(term => term.Name)]);

    private static string NameOf(Cause cause) =>
        cause == Cause.DoughTemperature ? "dough_temperature"
        : cause == Cause.Yeast ? "yeast"
        : cause == Cause.Hydration ? "hydration"
        : cause == Cause.Salt ? "salt"
        : cause == Cause.Sugar ? "sugar"
        : ProofTerm;
}
