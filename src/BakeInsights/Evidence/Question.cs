namespace BakeInsights;

/// <summary>What a model is asked: which result, of which bakes, by which causes.</summary>
/// <param name="Result">The measure to explain.</param>
/// <param name="Name">What the result is called in sentences.</param>
/// <param name="Observed">
/// The result of a bake as the model takes it, in the measure's canonical unit: a time known only to lie between two
/// looks is the middle of them.
/// </param>
/// <param name="Scale">The scale on which the model has it.</param>
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
    ResultScale Scale,
    string Unit,
    IReadOnlyList<Exclusion> Exclusions,
    IReadOnlyList<CandidateTerm> Candidates)
{
    /// <summary>The response of a bake that has the result.</summary>
    public double ResponseOf(Bake bake) => Scale.Of(Observed(bake)!.Value);
}

/// <summary>A reason not to count a bake.</summary>
/// <param name="Reason">Why, in a few words.</param>
/// <param name="Applies">Whether it holds for a bake.</param>
internal sealed record Exclusion(string Reason, Func<Bake, bool> Applies)
{
    /// <summary>Bakes that lack a measure.</summary>
    public static Exclusion Without(Measure measure) => new($"no {measure.Words}", bake => measure.Of(bake) is null);

    /// <summary>The bakes that it does not apply to; those that it does are added, with the reason, to the ones left out.</summary>
    public IReadOnlyList<Bake> LeaveOut(IReadOnlyList<Bake> bakes, List<LeftOutBakes> aside)
    {
        var these = bakes.Where(Applies).ToHashSet();
        if (these.Count == 0)
        {
            return bakes;
        }

        aside.Add(new LeftOutBakes(Reason, [.. bakes.Where(these.Contains)]));
        return [.. bakes.Where(bake => !these.Contains(bake))];
    }
}
