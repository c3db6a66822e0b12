using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A term that a model would like to have, if the journal can support it.</summary>
/// <param name="Name">The term.</param>
/// <param name="Unit">The unit of its coefficient.</param>
/// <param name="Causes">What the term is made of: one cause, or the two of a product.</param>
/// <param name="LevelsNeeded">How many levels of each cause it takes: two for a slope, three for a curve.</param>
/// <param name="Combine">The term's value from its first and last cause, each counted from its centre.</param>
internal sealed record CandidateTerm(
    string Name, string Unit, IReadOnlyList<Cause> Causes, int LevelsNeeded, Func<double, double, double> Combine)
{
    /// <summary>The power of each cause in the term; empty where it is no product of powers.</summary>
    public IReadOnlyList<int> Powers { get; private init; } = [];

    /// <summary>The term that is one cause itself, a straight line.</summary>
    public static CandidateTerm Line(string name, string unit, Cause cause) =>
        new(name, unit, [cause], 2, (one, _) => one) { Powers = [1] };

    /// <summary>The term that is the logarithm of one cause.</summary>
    public static CandidateTerm Log(string name, string unit, Cause cause) => new(name, unit, [cause], 2, (one, _) => Math.Log(one));

    /// <summary>The term that is the square of one cause.</summary>
    public static CandidateTerm Square(string name, string unit, Cause cause) =>
        new(name, unit, [cause], 3, (one, _) => one * one) { Powers = [2] };

    /// <summary>The term that is the product of two causes.</summary>
    public static CandidateTerm Product(string name, string unit, Cause one, Cause other) =>
        new(name, unit, [one, other], 2, (one, other) => one * other) { Powers = [1, 1] };

    /// <summary>The term's value, or null when a cause is missing or has no such value (the logarithm of zero).</summary>
    public double? ValueFrom(Func<Measure, double?> valueOf)
    {
        if (valueOf(Causes[0].Measure) is not { } one || valueOf(Causes[^1].Measure) is not { } other)
        {
            return null;
        }

        var combined = Combine(one - Causes[0].Centre, other - Causes[^1].Centre);
        return double.IsFinite(combined) ? combined : null;
    }

    /// <summary>The term's value for a bake, or null when the bake lacks it.</summary>
    public double? ValueOf(Bake bake) => ValueFrom(measure => measure.Of(bake));

    /// <summary>The term's values for bakes that all have it, as a column.</summary>
    public DesignColumn ColumnOf(IReadOnlyList<Bake> bakes, string prefix = "") =>
        new(prefix + Name, [.. bakes.Select(bake => ValueOf(bake)!.Value)]);
}
