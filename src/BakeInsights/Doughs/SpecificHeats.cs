namespace BakeInsights;

/// <summary>Heat that warms one kilogram by one degree, in kJ/(kg K).</summary>
public static class SpecificHeats
{
    /// <summary>Water (physics).</summary>
    public const double Water = 4.18;

    /// <summary>Flour (Cengel and Boles, Thermodynamics, 8th edition, problem 5-157); others, from memory, 1.8 to 2.0.</summary>
    public const double Flour = 1.76;

    /// <summary>Whole milk (abstract of a calorimeter paper).</summary>
    public const double Milk = 3.94;

    /// <summary>A preferment or dough of flour and water, mixed from the two.</summary>
    public static double FlourAndWater(double hydrationPct)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hydrationPct);
        var water = hydrationPct / 100;
        return (Flour + (water * Water)) / (1 + water);
    }
}
