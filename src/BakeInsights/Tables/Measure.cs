namespace BakeInsights;

/// <summary>One number about a bake, read from the journal or worked out from it.</summary>
/// <param name="Name">The name in tables and models, its unit at the end.</param>
/// <param name="Title">The name for people, without a unit.</param>
/// <param name="Dimension">What it measures; values are in the dimension's canonical unit.</param>
/// <param name="Formula">How it is worked out, in the names of columns.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Of">The value for a bake, or null when the journal lacks what it takes.</param>
public sealed record Measure(
    string Name, string Title, Dimension Dimension, string Formula, string Source, Func<Bake, double?> Of)
{
    private readonly Func<Bake, double?> _perFlour = _ => 0;

    /// <summary>The title as it stands inside a sentence; one that is all capitals stays so.</summary>
    public string Words => Title.Length > 1 && char.IsUpper(Title[1]) ? Title : Title.ToLowerInvariant();

    /// <summary>
    /// How the measure moves with the flour weighed in: its derivative by the natural logarithm of
    /// <see cref="BakeColumns.Flour"/>, so that 1 % more flour moves it by a hundredth of this. Below zero for a
    /// percentage of flour; 0 for what has nothing to do with flour; null when the bake lacks the measure.
    /// </summary>
    /// <remarks>
    /// All measures of a bake share one error of flour: with the same relative error e in it, each is off by
    /// sensitivity x e, and their errors are correlated 1 (or -1). Consumers that use several measures of a bake at
    /// once have to move them together.
    /// </remarks>
    public double? SensitivityToFlour(Bake bake)
    {
        ArgumentNullException.ThrowIfNull(bake);
        return Of(bake) is null ? null : _perFlour(bake);
    }

    /// <summary>
    /// The standard deviation that the flour's uncertainty brings (<see cref="Bake.FlourRelativeSd"/>), in the
    /// measure's unit: 0 where the flour was weighed or does not matter, null when the bake lacks the measure.
    /// </summary>
    /// <remarks>
    /// To first order in the error (the delta method); for flour uncertain by 8 % the exact value for a percentage is
    /// some 3 % larger.
    /// </remarks>
    public double? SdOf(Bake bake) => SensitivityToFlour(bake) is { } slope ? Math.Abs(slope) * bake.FlourRelativeSd : null;

    /// <summary>The same measure with its derivative by ln(flour).</summary>
    internal Measure MovedByFlour(Func<Bake, double?> perFlour) => new(this, perFlour);

    private Measure(Measure measure, Func<Bake, double?> perFlour)
        : this(measure.Name, measure.Title, measure.Dimension, measure.Formula, measure.Source, measure.Of) =>
        _perFlour = perFlour;
}
