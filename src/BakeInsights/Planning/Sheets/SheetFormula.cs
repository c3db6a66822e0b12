using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The formula that a sheet starts from.</summary>
/// <param name="Name">Its name; empty for the typical dough of all bakes.</param>
/// <param name="Formula">What is weighed.</param>
/// <param name="Bakes">How many bakes it is the median of; 0 when it was written down.</param>
internal sealed record SheetFormula(string Name, Formula Formula, int Bakes)
{
    /// <summary>The formula of this name: of <c>formulas.csv</c>, or the typical one of the bakes that were made by it.</summary>
    public static Attempt<SheetFormula> Find(Journal journal, string? name)
    {
        if (name is null)
        {
            return TypicalDough.Of(journal.Bakes).Select(typical => new SheetFormula("", typical.Formula, typical.Bakes));
        }

        bool Is(string? other) => name.Trim().Equals(other?.Trim(), StringComparison.OrdinalIgnoreCase);
        var lines = journal.FormulaIngredients.Where(line => Is(line.Formula)).ToList();
        var bakes = journal.Bakes.Where(bake => Is(bake[BakeColumns.Formula])).ToList();
        return lines.Count > 0 ? WrittenFormula.Of(lines, journal.Bakes).Select(formula => new SheetFormula(lines[0].Formula, Sized(formula, lines, journal), 0))
            : bakes.Count > 0 ? TypicalDough.Of(bakes).Select(typical => new SheetFormula(bakes[0][BakeColumns.Formula]!, typical.Formula, typical.Bakes))
            : Unknown(journal, name);
    }

    /// <summary>The formula with what a bake wishes otherwise, all flour as it was.</summary>
    public Attempt<Formula> With(SheetBake bake, YeastKind usualYeast)
    {
        var flourG = Formula.Masses.FlourG;
        var fermented = Ingredient.Flattened(Formula.Ingredients.Where(one => one.Role == IngredientRole.Preferment)).ToList();
        var fermentedWater = fermented.Where(one => one.Role == IngredientRole.Water).Sum(one => one.Grams);
        var ingredients = Formula.Ingredients.ToList();
        if (bake.HydrationPct is { } hydration)
        {
            var least = 100 * fermentedWater / flourG;
            if (hydration < least)
            {
                return new FitProblem(
                    FitProblemKind.ImpossibleValue,
                    ["hydration"],
                    FormattableString.Invariant($"A hydration of {hydration:0.#} % is less than the preferment alone brings."),
                    FormattableString.Invariant($"Ask for {Math.Ceiling(least):0} % or more."));
            }

            Set(ingredients, IngredientRole.Water, (flourG * hydration / 100) - fermentedWater, Ingredient.PouredWater);
        }

        Set(ingredients, IngredientRole.Salt, flourG * bake.SaltPct / 100, Ingredient.Salt);
        Set(ingredients, IngredientRole.Sugar, flourG * bake.SugarPct / 100, Ingredient.Sugar);
        var kind = ingredients.Select(one => one.YeastKind).FirstOrDefault(one => one is not null) ?? usualYeast;
        Set(ingredients, IngredientRole.Yeast, flourG * bake.YeastPct / 100 / YeastEquivalent.Instant(1, kind), grams => Ingredient.Yeast(grams, kind));
        return new Formula([.. ingredients]);
    }

    // What is there is scaled, so that two salts stay two; what is not there is added.
    private static void Set(List<Ingredient> ingredients, IngredientRole role, double? wantedG, Func<double, Ingredient> made)
    {
        if (wantedG is not { } grams)
        {
            return;
        }

        var had = ingredients.Where(one => one.Role == role).Sum(one => one.Grams);
        if (had > 0)
        {
            var factor = grams / had;
            for (var i = 0; i < ingredients.Count; i++)
            {
                ingredients[i] = ingredients[i].Role == role ? ingredients[i].Times(factor) : ingredients[i];
            }
        }
        else if (grams > 0)
        {
            ingredients.Add(made(grams));
        }
    }

    // Percentages alone say nothing of the amount: the journal's usual one is taken.
    private static Formula Sized(Formula formula, List<FormulaIngredient> lines, Journal journal) =>
        lines.All(line => line.AmountG is null) && TypicalDough.Of(journal.Bakes).TryGet(out var typical, out _)
            ? formula.ForFlour(typical.Formula.Masses.FlourG)
            : formula;

    private static FitProblem Unknown(Journal journal, string name)
    {
        var known = journal.FormulaIngredients.Select(line => line.Formula)
            .Concat(journal.Bakes.Select(bake => bake[BakeColumns.Formula]).OfType<string>())
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Order(StringComparer.Ordinal)
            .ToList();
        return new FitProblem(
            FitProblemKind.ImpossibleValue,
            [BakeColumns.Formula.Name],
            $"There is no formula {name} in {journal.Name}.",
            known.Count == 0
                ? "It names none: leave --formula away for its typical dough."
                : $"Say {string.Join(", or ", known)}, or leave --formula away for the journal's typical dough.");
    }
}
