namespace BakeInsights;

/// <summary>Something that goes into a dough with its heat.</summary>
/// <param name="Grams">Its mass.</param>
/// <param name="At">Its temperature.</param>
/// <param name="SpecificHeat">Heat that warms it, in kJ/(kg K); see <see cref="SpecificHeats"/>.</param>
public readonly record struct HeatPart(double Grams, Temperature At, double SpecificHeat)
{
    /// <summary>Milk.</summary>
    public static HeatPart Milk(double grams, Temperature at) => new(grams, at, SpecificHeats.Milk);

    /// <summary>A preferment of flour and water.</summary>
    public static HeatPart Preferment(double grams, double hydrationPct, Temperature at) =>
        new(grams, at, SpecificHeats.FlourAndWater(hydrationPct));

    /// <summary>Joules that warm it by a degree.</summary>
    internal double Capacity => Grams * SpecificHeat;
}
