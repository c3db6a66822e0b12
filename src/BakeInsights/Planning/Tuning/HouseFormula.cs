using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The settings of a formula of the journal.</summary>
public static class HouseFormula
{
    /// <summary>
    /// Hydration, yeast, salt and sugar of a formula of <c>formulas.csv</c>, or of the typical dough of the bakes made by it.
    /// </summary>
    /// <param name="journal">The journal.</param>
    /// <param name="name">The formula's name.</param>
    /// <returns>The settings, or a problem that names the formulas there are.</returns>
    public static Attempt<DoughSettings> Of(Journal journal, string name)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(name);
        return SheetFormula.Find(journal, name).Select(found =>
        {
            var ingredients = Ingredient.Flattened(found.Formula.Ingredients).ToList();
            double PercentOf(IngredientRole role) => found.Formula.Masses.PercentOfFlour(ingredients.Where(one => one.Role == role)
                .Sum(one => one.YeastKind is { } kind ? YeastEquivalent.Instant(one.Grams, kind) : one.Grams));
            var settings = DoughSettings.MiddleOf([])
                .With(Measures.Hydration, found.Formula.HydrationPct)
                .With(Measures.Salt, PercentOf(IngredientRole.Salt))
                .With(Measures.Sugar, PercentOf(IngredientRole.Sugar));
            var yeast = PercentOf(IngredientRole.Yeast);
            return yeast > 0 ? settings.With(Measures.Yeast, yeast) : settings;
        });
    }
}
