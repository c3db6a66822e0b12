namespace BakeInsights;

/// <summary>Flour and water of a dough, those of its preferment counted in.</summary>
/// <remarks>
/// Baker's percentages are parts in a hundred of all flour in the dough (the trade's convention). Leaving the
/// preferment out of the total makes a 68 % dough look like a 52 % one.
/// </remarks>
public readonly record struct DoughMasses
{
    /// <summary>Adds the flour and water of a preferment to those weighed into the dough.</summary>
    /// <param name="flourG">Flour weighed in, in grams, not negative.</param>
    /// <param name="waterG">Water weighed in, in grams, not negative.</param>
    /// <param name="prefermentG">Mass of the preferment, in grams; 0 without one.</param>
    /// <param name="prefermentHydrationPct">Its water in percent of its flour: 100 for a poolish.</param>
    public DoughMasses(double flourG, double waterG, double prefermentG, double prefermentHydrationPct)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(flourG);
        ArgumentOutOfRangeException.ThrowIfNegative(waterG);
        ArgumentOutOfRangeException.ThrowIfNegative(prefermentG);
        ArgumentOutOfRangeException.ThrowIfNegative(prefermentHydrationPct);
        PrefermentedFlourG = prefermentG / (1 + (prefermentHydrationPct / 100));
        FlourG = flourG + PrefermentedFlourG;
        WaterG = waterG + prefermentG - PrefermentedFlourG;
        if (FlourG == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(flourG), "A dough without flour has no baker's percentages.");
        }
    }

    /// <summary>All flour, in grams.</summary>
    public double FlourG { get; }

    /// <summary>All water, in grams.</summary>
    public double WaterG { get; }

    /// <summary>The flour that was fermented ahead, in grams.</summary>
    public double PrefermentedFlourG { get; }

    /// <summary>Baker's percent of a mass: its parts in a hundred of all flour.</summary>
    public double PercentOfFlour(double grams) => 100 * grams / FlourG;

    /// <summary>Water in percent of flour, as the formula states it: what milk and egg bring is not in it.</summary>
    public double HydrationPct => PercentOfFlour(WaterG);

    /// <summary>Prefermented flour in percent of all flour.</summary>
    public double PrefermentedFlourPct => PercentOfFlour(PrefermentedFlourG);

    /// <summary>
    /// Dough yield (Teigausbeute): 100 x (flour + poured liquid) / flour. The trade counts milk in full as liquid,
    /// though only 88 % of it is water.
    /// </summary>
    /// <param name="milkG">Milk, in grams.</param>
    public double Yield(double milkG) => 100 + PercentOfFlour(WaterG + milkG);
}
