using System.Globalization;

namespace BakeInsights;

/// <summary>A line of a formula by the cup.</summary>
/// <param name="Ingredient">The ingredient as it would be weighed.</param>
/// <param name="Amount">Its cups and spoons; null where no weight of a cup is published, so that it must be weighed.</param>
public sealed record HouseholdLine(Ingredient Ingredient, HouseholdAmount? Amount);

/// <summary>A formula in cups and spoons, with what that does to its hydration.</summary>
/// <remarks>
/// Flour that is just "flour" is taken as white wheat flour, the only one whose cup is published by way of filling; a
/// flour of another name has its one published cup, or is weighed. Dry yeast of either kind is taken at the weight of
/// active dry. Water in a cup is taken as exact: nothing is published on its spread.
/// </remarks>
public sealed class HouseholdFormula
{
    private readonly Formula _filled;

    /// <summary>A formula by the cup.</summary>
    /// <param name="formula">The formula by weight.</param>
    /// <param name="flour">How the cups of flour are filled; weighed leaves the flour in grams.</param>
    public HouseholdFormula(Formula formula, FlourMeasure flour)
    {
        ArgumentNullException.ThrowIfNull(formula);
        Lines = [.. formula.Ingredients.Select(one => new HouseholdLine(one, AmountOf(one, flour)))];
        _filled = new Formula([.. Lines.Select(AsFilled)]);
        FlourSpreadPct = FlourFilling.SpreadPct(flour);
    }

    /// <summary>The ingredients in the formula's order.</summary>
    public IReadOnlyList<HouseholdLine> Lines { get; }

    /// <summary>The standard deviation of the flour that the cups hold, in percent.</summary>
    public double FlourSpreadPct { get; }

    /// <summary>Hydration after rounding, when the cups hold just what they are said to.</summary>
    public double HydrationPct => _filled.HydrationPct;

    /// <summary>Hydration when the cups hold more flour than said by one standard deviation.</summary>
    public double LowHydrationPct => Hydration(1 + (FlourSpreadPct / 100));

    /// <summary>
    /// Hydration when the cups hold less flour than said by one standard deviation. About two doughs in three lie
    /// between the two when one hand fills all the cups, for its habit does not average out.
    /// </summary>
    public double HighHydrationPct => Hydration(1 - (FlourSpreadPct / 100));

    /// <summary>
    /// The range in words, rounded outwards to whole percent: "62 to 68 % hydration"; one number when all flour is weighed.
    /// </summary>
    public string HydrationText => LowHydrationPct == HighHydrationPct
        ? string.Create(CultureInfo.InvariantCulture, $"{HydrationPct:F0} % hydration")
        : string.Create(
            CultureInfo.InvariantCulture,
            $"{Math.Floor(LowHydrationPct)} to {Math.Ceiling(HighHydrationPct)} % hydration");

    // A preferment's flour and flour that is weighed are what they are; only what is filled into cups can be off.
    private double Hydration(double factor)
    {
        var byCup = Lines.Where(line => line.Ingredient.Role == IngredientRole.Flour).Sum(line => line.Amount?.GivenG ?? 0);
        return 100 * _filled.Masses.WaterG / (_filled.Masses.FlourG + (byCup * (factor - 1)));
    }

    private static Ingredient AsFilled(HouseholdLine line) =>
        line.Amount is { } amount ? line.Ingredient.Times(amount.GivenG / amount.WantedG) : line.Ingredient;

    private static HouseholdAmount? AmountOf(Ingredient one, FlourMeasure flour)
    {
        var weight = one.Role switch
        {
            IngredientRole.Flour when flour == FlourMeasure.Weighed => null,
            IngredientRole.Flour when one.Name == Ingredient.PlainFlour => HouseholdWeights.OfFlour(flour),
            IngredientRole.Yeast => one.YeastKind == YeastKind.Fresh ? null : HouseholdWeights.Of("yeast"),
            _ => HouseholdWeights.Of(one.Name),
        };
        return weight is null || one.Grams == 0 ? null : HouseholdAmount.Of(one.Grams, weight);
    }
}
