using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Takes the settings of a dough from a formula of <c>formulas.csv</c>.</summary>
public static class HouseFormula
{
    private const string Flour = "flour";

    private static readonly (Measure Setting, string[] Names, double Factor)[] Known =
    [
        (Measures.Hydration, ["water"], 1),
        (Measures.Salt, ["salt"], 1),
        (Measures.Sugar, ["sugar"], 1),
        (Measures.Yeast, ["yeast", "instant yeast"], 1),
        (Measures.Yeast, ["active dry yeast", "dry yeast"], YeastEquivalent.Instant(1, YeastKind.ActiveDry)),
        (Measures.Yeast, ["fresh yeast"], YeastEquivalent.Instant(1, YeastKind.Fresh)),
    ];

    /// <summary>
    /// Water, salt, sugar and yeast of a formula in percent of flour, plain yeast taken as instant; a formula in grams needs
    /// its flour (every ingredient whose name ends in flour).
    /// </summary>
    /// <param name="journal">The journal.</param>
    /// <param name="name">The formula's name.</param>
    /// <returns>The settings, or a problem that names the formulas there are.</returns>
    public static Attempt<DoughSettings> Of(Journal journal, string name)
    {
        ArgumentNullException.ThrowIfNull(journal);
        FormulaIngredient[] lines = [.. journal.FormulaIngredients.Where(line => line.Formula.Equals(name, StringComparison.OrdinalIgnoreCase))];
        if (lines.Length == 0)
        {
            var there = string.Join(", ", journal.FormulaIngredients.Select(line => line.Formula).Distinct());
            return new FitProblem(
                FitProblemKind.MissingValue,
                ["formula"],
                $"The journal has no formula {name}.",
                there.Length > 0 ? $"Name one of {there}." : "Write it into formulas.csv, or leave it out for the typical dough.");
        }

        var flour = lines.Where(line => line.Ingredient.EndsWith(Flour, StringComparison.OrdinalIgnoreCase)).Sum(line => line.AmountG ?? 0);
        var settings = DoughSettings.MiddleOf([]);
        foreach (var (setting, names, factor) in Known)
        {
            foreach (var line in lines.Where(line => names.Contains(line.Ingredient.ToLowerInvariant())))
            {
                if ((line.Percent ?? (flour > 0 ? 100 * line.AmountG / flour : null)) is { } percent)
                {
                    settings = settings.With(setting, (settings[setting] ?? 0) + (percent * factor));
                }
            }
        }

        return settings;
    }
}
