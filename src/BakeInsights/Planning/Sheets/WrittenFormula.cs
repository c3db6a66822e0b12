using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A formula of <c>formulas.csv</c>, its lines put together.</summary>
internal static class WrittenFormula
{
    // Percentages alone say nothing of the amount.
    private const double FlourWithoutAmountG = 1_000;

    private static readonly string[] Preferments = ["preferment", "poolish", "sponge", "levain", "biga", "starter"];
    private static readonly string[] FlourWords = ["flour", "semolina", "rye", "wheat", "spelt"];

    /// <summary>The formula, or why its lines don't make one.</summary>
    /// <param name="lines">The lines of one formula, at least one.</param>
    /// <param name="bakes">The journal's bakes, which say the kind of yeast and the preferment's water where the lines don't.</param>
    public static Attempt<Formula> Of(IReadOnlyList<FormulaIngredient> lines, IReadOnlyList<Bake> bakes)
    {
        var name = lines[0].Formula;
        var hydration = TypicalDough.UsualPrefermentHydration(bakes);
        if (lines.FirstOrDefault(IsPreferment) is { } preferment && hydration is null)
        {
            return Problem($"The formula {name} has {preferment.Ingredient} in it, and how wet that is isn't known.",
                $"Log {BakeColumns.PrefermentHydration} of a bake with it, or write its flour and water as lines of their own.");
        }

        if (FlourOf(lines, hydration ?? 0) is not { } flourG)
        {
            return lines.Any(line => line.Percent is null) && lines.Any(line => line.Percent is not null)
                ? Problem($"The formula {name} has some lines by weight and some in percent, and no flour by weight to bring them together.",
                    "Give the flour's amount, or all lines in percent.")
                : Problem($"The formula {name} has no flour.", "Add a line for its flour.");
        }

        double GramsOf(FormulaIngredient line) => line.AmountG ?? flourG * line.Percent!.Value / 100;
        List<Ingredient> ingredients = [.. lines.Select(line => Made(line.Ingredient, GramsOf(line), bakes, hydration ?? 0))];
        var fermented = Ingredient.Flattened(ingredients.Where(one => one.Role == IngredientRole.Preferment))
            .Where(part => part.Role == IngredientRole.Flour).Sum(part => part.Grams);
        if (!ingredients.Any(one => one.Role == IngredientRole.Flour))
        {
            ingredients.Insert(0, Ingredient.Flour(Math.Max(0, flourG - fermented)));
        }

        return new Formula([.. ingredients]);
    }

    /// <summary>The role that an ingredient's name says.</summary>
    public static IngredientRole RoleOf(string ingredient)
    {
        var words = ingredient.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            _ when words.Contains("yeast") => IngredientRole.Yeast,
            _ when words.Any(Preferments.Contains) => IngredientRole.Preferment,
            _ when words.Any(FlourWords.Contains) => IngredientRole.Flour,
            ["water"] => IngredientRole.Water,
            ["salt"] => IngredientRole.Salt,
            ["sugar"] => IngredientRole.Sugar,
            ["butter"] or ["oil"] or ["fat"] => IngredientRole.Fat,
            ["milk"] => IngredientRole.Milk,
            ["egg"] or ["eggs"] => IngredientRole.Egg,
            ["honey"] => IngredientRole.Honey,
            _ => IngredientRole.Other,
        };
    }

    private static bool IsPreferment(FormulaIngredient line) => RoleOf(line.Ingredient) == IngredientRole.Preferment;

    // All flour in grams; null where the lines don't tell.
    private static double? FlourOf(IReadOnlyList<FormulaIngredient> lines, double hydration)
    {
        var flours = lines.Where(line => RoleOf(line.Ingredient) == IngredientRole.Flour).ToList();
        var amounts = flours.Where(line => line.AmountG > 0).ToList();
        if (amounts.Count > 0 && amounts.Count == flours.Count)
        {
            // A preferment by weight brings flour too; one in percent of all flour is a share of what is looked for.
            var weighed = amounts.Sum(line => line.AmountG!.Value)
                + lines.Where(IsPreferment).Sum(line => (line.AmountG ?? 0) / (1 + (hydration / 100)));
            var share = lines.Where(IsPreferment).Sum(line => line.AmountG is null ? line.Percent!.Value / 100 / (1 + (hydration / 100)) : 0);
            return share < 1 ? weighed / (1 - share) : null;
        }

        return lines.All(line => line.Percent is not null && line.AmountG is null) && (flours.Count == 0 || flours.Sum(line => line.Percent) > 0)
            ? FlourWithoutAmountG
            : null;
    }

    private static Ingredient Made(string ingredient, double grams, IReadOnlyList<Bake> bakes, double hydration) => RoleOf(ingredient) switch
    {
        IngredientRole.Flour => Ingredient.Flour(grams, ingredient.ToLowerInvariant()),
        IngredientRole.Water => Ingredient.PouredWater(grams),
        IngredientRole.Salt => Ingredient.Salt(grams),
        IngredientRole.Yeast => Ingredient.Yeast(grams, KindOf(ingredient) ?? TypicalDough.UsualYeast(bakes) ?? YeastKind.Instant),
        IngredientRole.Sugar => Ingredient.Sugar(grams),
        IngredientRole.Fat when ingredient.Equals("butter", StringComparison.OrdinalIgnoreCase) => Ingredient.Butter(grams),
        IngredientRole.Fat when ingredient.Equals("oil", StringComparison.OrdinalIgnoreCase) => Ingredient.Oil(grams),
        IngredientRole.Milk => Ingredient.Milk(grams),
        IngredientRole.Egg => Ingredient.Egg(grams),
        IngredientRole.Honey => Ingredient.Honey(grams),
        IngredientRole.Preferment when grams > 0 => Ingredient.Preferment(ingredient, grams, hydration),
        IngredientRole.Fat => Ingredient.Of(ingredient, IngredientRole.Fat, grams, WaterContents.None),
        _ => Ingredient.Of(ingredient, IngredientRole.Other, grams, WaterContents.None),
    };

    private static YeastKind? KindOf(string ingredient)
    {
        bool Says(string word) => ingredient.Contains(word, StringComparison.OrdinalIgnoreCase);
        return Says("instant") ? YeastKind.Instant
            : Says("fresh") || Says("compressed") ? YeastKind.Fresh
            : Says("dry") ? YeastKind.ActiveDry
            : null;
    }

    private static FitProblem Problem(string message, string remedy) =>
        new(FitProblemKind.ImpossibleValue, ["formula"], message, remedy);
}
