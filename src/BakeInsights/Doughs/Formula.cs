using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>The formula of one dough: what is weighed, and every percentage the trade takes from it.</summary>
/// <remarks>
/// Totals count what went into a preferment. Baker's percentages are parts in a hundred of all flour (the trade's
/// convention; <see cref="DoughMasses"/>); <see cref="FormulaLine.PctOfDough"/> is the other percentage, of the dough.
/// </remarks>
public sealed class Formula
{
    private readonly ImmutableArray<Ingredient> _flattened;

    /// <summary>A formula of these ingredients; at least some of them is flour.</summary>
    public Formula(params ReadOnlySpan<Ingredient> ingredients)
    {
        Ingredients = [.. ingredients];
        _flattened = [.. Ingredient.Flattened(Ingredients)];
        var weighedIn = Ingredients.Where(one => one.Role != IngredientRole.Preferment).ToList();
        var prefermented = Ingredient.Flattened(Ingredients.Where(one => one.Role == IngredientRole.Preferment)).ToList();
        var flour = Sum(prefermented, IngredientRole.Flour);
        var water = Sum(prefermented, IngredientRole.Water);
        FlourWeighedInG = Sum(weighedIn, IngredientRole.Flour);
        Masses = new DoughMasses(
            FlourWeighedInG, Sum(weighedIn, IngredientRole.Water), flour + water, flour == 0 ? 0 : 100 * water / flour);
    }

    /// <summary>What is weighed on the bench; a preferment is one ingredient.</summary>
    public ImmutableArray<Ingredient> Ingredients { get; }

    /// <summary>All flour and all water.</summary>
    public DoughMasses Masses { get; }

    /// <summary>The whole dough, in grams.</summary>
    public double TotalG => Ingredients.Sum(one => one.Grams);

    /// <summary>The flour weighed into the final dough, that of preferments left out, in grams.</summary>
    public double FlourWeighedInG { get; }

    /// <summary>The lines on the bench sheet, preferments as one ingredient each.</summary>
    public IReadOnlyList<FormulaLine> Lines => [.. Ingredients.Select(Line)];

    /// <summary>The total formula: preferments taken apart, ingredients of one name and role added up.</summary>
    public IReadOnlyList<FormulaLine> TotalLines =>
    [
        .. _flattened
            .GroupBy(one => (one.Name, one.Role))
            .Select(group => Line(group.Key.Name, group.Key.Role, group.Sum(one => one.Grams))),
    ];

    /// <summary>Water in percent of flour, as the formula states it: milk, egg and butter are not counted.</summary>
    public double HydrationPct => Masses.HydrationPct;

    /// <summary>The water that all ingredients bring by their composition, flour's own moisture left out, in grams.</summary>
    public double EffectiveWaterG => _flattened.Sum(one => one.Grams * one.Water.Pct / 100);

    /// <summary>Water by composition in percent of flour (<see cref="WaterContents"/>).</summary>
    public double EffectiveHydrationPct => Masses.PercentOfFlour(EffectiveWaterG);

    /// <summary>Flour that was fermented ahead, in percent of all flour: one usage of "inoculation".</summary>
    public double PrefermentedFlourPct => Masses.PrefermentedFlourPct;

    /// <summary>
    /// Mass of the preferments in percent of the flour weighed into the final dough: the other usage of
    /// "inoculation"; of a levain's own build, seed on flour. Null when no flour is weighed in.
    /// </summary>
    public double? InoculationPct => FlourWeighedInG == 0
        ? null
        : 100 * Ingredients.Where(one => one.Role == IngredientRole.Preferment).Sum(one => one.Grams) / FlourWeighedInG;

    /// <summary>Net dough yield (Teigausbeute): flour, water and milk for each 100 of flour.</summary>
    public double DoughYield => Masses.Yield(GramsOf(IngredientRole.Milk));

    /// <summary>Gross dough yield: the whole dough for each 100 of flour.</summary>
    public double GrossDoughYield => Masses.PercentOfFlour(TotalG);

    /// <summary>Yeast in percent of flour, as the instant yeast that does the same work (<see cref="YeastEquivalent"/>).</summary>
    public double YeastAsInstantPct => Masses.PercentOfFlour(
        _flattened.Sum(one => one.YeastKind is { } kind ? YeastEquivalent.Instant(one.Grams, kind) : 0));

    /// <summary>All of a role in the whole dough, preferments taken apart, in grams.</summary>
    public double GramsOf(IngredientRole role) =>
        role == IngredientRole.Preferment ? Sum(Ingredients, role) : Sum(_flattened, role);

    /// <summary>Baker's percent of a role: its parts in a hundred of all flour.</summary>
    public double PctOfFlour(IngredientRole role) => Masses.PercentOfFlour(GramsOf(role));

    /// <summary>The same formula in so many times the amount.</summary>
    public Formula Times(double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(factor);
        return new([.. Ingredients.Select(one => one.Times(factor))]);
    }

    /// <summary>The same formula for a mass of dough, such as <see cref="Loaves.DoughFor"/> gives.</summary>
    public Formula ForDough(double doughG) => Times(doughG / TotalG);

    /// <summary>The same formula for a mass of flour, preferments' counted in.</summary>
    public Formula ForFlour(double flourG) => Times(flourG / Masses.FlourG);

    private static double Sum(IEnumerable<Ingredient> ingredients, IngredientRole role) =>
        ingredients.Where(one => one.Role == role).Sum(one => one.Grams);

    private FormulaLine Line(Ingredient one) => Line(one.Name, one.Role, one.Grams);

    private FormulaLine Line(string name, IngredientRole role, double grams) =>
        new(name, role, grams, Masses.PercentOfFlour(grams), 100 * grams / TotalG);
}
