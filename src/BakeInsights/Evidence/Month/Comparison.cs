using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What is compared between two months.</summary>
/// <param name="Name">The question's name, without its first part.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Question">The question.</param>
/// <param name="Exclusions">The bakes that can't speak to it.</param>
/// <param name="ValueOf">The value of a bake that can.</param>
/// <param name="Scale">The scale of that value.</param>
internal sealed record Comparison(
    string Name,
    Measure Measure,
    string Question,
    IReadOnlyList<Exclusion> Exclusions,
    Func<Bake, double> ValueOf,
    ResultScale Scale)
{
    /// <summary>A difference in the measure's unit, and in percent where logarithms were compared.</summary>
    public (Estimate Effect, Estimate? Percent) InUnits(Term difference, IReadOnlyList<Bake> before)
    {
        var change = Estimate.Of(difference);
        return (Scale.Difference(change, Scale.Back(before.Average(ValueOf))), Scale.Percent(change));
    }
}
