namespace BakeInsights;

/// <summary>How a result is asked about when the cause is a column or a group.</summary>
internal static class ResultQuestion
{
    /// <summary>The question about a measure: that of its own model where it has one.</summary>
    public static Question Of(Measure result) =>
        result == Measures.RiseTime ? RiseTime.Question
        : result == Measures.SpecificVolume ? LoafVolume.Question
        : result == Measures.ProofTime ? ProofTime.Question
        : new Question(
            result, result.Words, result.Of, ResultScale.Plain, result.Name, [Exclusion.Without(result)],
            [
                CandidateTerm.Line(RiseTime.DoughTemperatureTerm, $"{result.Name} per °C", Cause.DoughTemperature),
                CandidateTerm.Line(RiseTime.HydrationTerm, $"{result.Name} per percent of flour", Cause.Hydration),
            ]);

    /// <summary>The start of the names of its findings.</summary>
    public static string KeyOf(Measure result) =>
        result == Measures.RiseTime ? "rise_time"
        : result == Measures.ProofTime ? "proof_time"
        : result == Measures.SpecificVolume ? "loaf_volume"
        : result.Name;

    /// <summary>
    /// The terms that hold other causes still: the question's own, as far as those causes are named, and a straight line
    /// for any other measure.
    /// </summary>
    /// <param name="question">The question.</param>
    /// <param name="heldStill">The causes; null for all that the question has.</param>
    /// <param name="asked">The name of the column that is asked about, which can't be held still.</param>
    public static IReadOnlyList<CandidateTerm> HeldStill(Question question, IReadOnlyList<Measure>? heldStill, string asked)
    {
        var own = question.Candidates.Where(term => term.Causes.All(cause =>
            cause.Measure.Name != asked && (heldStill is null || heldStill.Contains(cause.Measure)))).ToList();
        var others = (heldStill ?? []).Where(measure => measure.Name != asked
            && !own.Exists(term => term.Causes.Any(cause => cause.Measure == measure)));
        return [.. own, .. others.Select(measure => CandidateTerm.Line(measure.Name, $"{question.Unit} per {measure.Name}", new Cause(measure, 0, Finest)))];
    }

    // Any two numbers that differ are two levels of a measure whose instrument isn't known.
    private const double Finest = 1e-9;
}
