namespace BakeInsights;

/// <summary>What a model is asked: which result, of which bakes, by which causes.</summary>
/// <param name="Result">The measure to explain.</param>
/// <param name="Name">What the result is called in sentences.</param>
/// <param name="Observed">
/// The result of a bake as the model takes it, in the measure's canonical unit: a time known only to lie between two
/// looks is the middle of them.
/// </param>
/// <param name="Response">The measure's value as the model has it, such as its logarithm.</param>
/// <param name="Unit">The unit of that.</param>
/// <param name="Exclusions">Bakes that can't speak to the question, in the order in which they are left out.</param>
/// <param name="Candidates">
/// The terms that the model would like to have, the most important first: when bakes are few, the last are left out
/// first.
/// </param>
internal sealed record Question(
    Measure Result,
    string Name,
    Func<Bake, double?> Observed,
    Func<double, double> Response,
    string Unit,
    IReadOnlyList<Exclusion> Exclusions,
    IReadOnlyList<CandidateTerm> Candidates)
{
    /// <summary>The response of a bake that has the result.</summary>
    public double ResponseOf(Bake bake) => Response(Observed(bake)!.Value);
}

/// <summary>A reason not to count a bake.</summary>
/// <param name="Reason">Why, in a few words.</param>
/// <param name="Applies">Whether it holds for a bake.</param>
internal sealed record Exclusion(string Reason, Func<Bake, bool> Applies);
