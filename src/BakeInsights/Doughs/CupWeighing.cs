namespace BakeInsights;

/// <summary>One cup that somebody filled and put on a scale.</summary>
/// <param name="Measurer">Who filled it.</param>
/// <param name="Ingredient">What was in it, by its column's stem: "flour", "sugar".</param>
/// <param name="Method">How it was filled; null where that does not matter or was not written down.</param>
/// <param name="GramsPerCup">Grams for a US customary cup of 236.588 mL; weighings in another cup are brought to it.</param>
public sealed record CupWeighing(string Measurer, string Ingredient, FlourMeasure? Method, double GramsPerCup)
{
    /// <summary>A weighing in whichever cup was used.</summary>
    /// <param name="measurer">Who filled it.</param>
    /// <param name="ingredient">What was in it, by its column's stem.</param>
    /// <param name="method">How it was filled; null where that was not written down.</param>
    /// <param name="cup">The cup: a unit of volume, such as <see cref="MeasureUnits.LabelCup"/>.</param>
    /// <param name="grams">What one such cup weighed, in grams.</param>
    public static CupWeighing In(string measurer, string ingredient, FlourMeasure? method, MeasureUnit cup, double grams)
    {
        ArgumentNullException.ThrowIfNull(cup);
        return cup.Dimension == Dimension.Volume
            ? new(measurer, ingredient, method, grams * MeasureUnits.Cup.ToCanonical(1) / cup.ToCanonical(1))
            : throw new ArgumentException($"A cup has a volume, and {cup.Symbol} is no unit of that.", nameof(cup));
    }
}
