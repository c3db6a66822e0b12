using BakeInsights.Inference;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>The dough in the middle of a journal's bakes, as a formula.</summary>
/// <param name="Formula">Each ingredient at the median of the bakes that have it, in the median amount of flour.</param>
/// <param name="Bakes">How many bakes have flour and water, so that they count.</param>
internal sealed record TypicalDough(Formula Formula, int Bakes)
{
    /// <summary>An ingredient belongs to the typical dough when at least this share of the bakes has it. Our own choice.</summary>
    private const double LeastShare = 0.5;

    private static readonly IReadOnlyList<(QuantityColumn Column, Func<double, Ingredient> Made)> Others =
    [
        (C.Salt, Ingredient.Salt), (C.Sugar, Ingredient.Sugar),
        (C.Fat, grams => Ingredient.Of("fat", IngredientRole.Fat, grams, WaterContents.None)),
        (C.Milk, Ingredient.Milk), (C.Egg, Ingredient.Egg), (C.Honey, Ingredient.Honey),
    ];

    /// <summary>The typical dough, or why there is none.</summary>
    public static Attempt<TypicalDough> Of(IReadOnlyList<Bake> all)
    {
        List<(Bake Bake, DoughMasses Masses)> bakes =
            [.. all.Select(bake => (bake, Measures.Masses(bake))).Where(each => each.Item2 is not null).Select(each => (each.bake, each.Item2!.Value))];
        if (bakes.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [C.Flour.Name, C.Water.Name],
                "No bake of the journal has both flour and water, so there is no typical dough.",
                $"Log {C.Flour} and {C.Water}, or write a formula into formulas.csv and name it with --formula.");
        }

        var flourG = Quantiles.Median(bakes.Select(each => each.Masses.FlourG));
        var hydration = Quantiles.Median(bakes.Select(each => each.Masses.HydrationPct));
        double GramsOf(QuantityColumn column) => flourG / 100 * (MedianPct(bakes, column) ?? 0);
        var preferment = PrefermentOf(bakes, GramsOf(C.Preferment));
        var inPreferment = preferment is null ? default : Ingredient.Flattened([preferment])
            .Aggregate((Flour: 0.0, Water: 0.0), (sum, part) => part.Role == IngredientRole.Flour
                ? (sum.Flour + part.Grams, sum.Water)
                : (sum.Flour, sum.Water + part.Grams));
        List<Ingredient> ingredients =
        [
            Ingredient.Flour(flourG - inPreferment.Flour, FlourName(bakes)),
            Ingredient.PouredWater(Math.Max(0, (flourG * hydration / 100) - inPreferment.Water)),
            .. Others.Select(other => (other.Made, Grams: GramsOf(other.Column))).Where(other => other.Grams > 0).Select(other => other.Made(other.Grams)),
        ];
        if (YeastOf(bakes, flourG) is { } yeast)
        {
            ingredients.Add(yeast);
        }

        if (preferment is not null)
        {
            ingredients.Add(preferment);
        }

        return new TypicalDough(new Formula([.. ingredients]), bakes.Count);
    }

    /// <summary>The kind of yeast that most bakes had; null when none says.</summary>
    public static YeastKind? UsualYeast(IEnumerable<Bake> bakes) => bakes
        .Where(bake => bake[C.Yeast] > 0)
        .Select(bake => bake.YeastKind)
        .OfType<YeastKind>()
        .GroupBy(kind => kind)
        .OrderByDescending(group => group.Count()).ThenBy(group => group.Key)
        .Select(group => (YeastKind?)group.Key)
        .FirstOrDefault();

    /// <summary>The usual water of a preferment, in percent of its flour; null when no bake says.</summary>
    public static double? UsualPrefermentHydration(IEnumerable<Bake> bakes) =>
        bakes.Select(bake => bake[C.PrefermentHydration]).Known().ToList() is { Count: > 0 } known ? Quantiles.Median(known) : null;

    private static Ingredient? YeastOf(List<(Bake Bake, DoughMasses Masses)> bakes, double flourG)
    {
        var known = bakes.Select(each => Measures.Yeast.Of(each.Bake)).Known().Where(pct => pct > 0).ToList();
        return UsualYeast(bakes.Select(each => each.Bake)) is { } kind && known.Count >= LeastShare * bakes.Count
            ? Ingredient.Yeast(Quantiles.Median(known) * flourG / 100 / YeastEquivalent.Instant(1, kind), kind)
            : null;
    }

    private static Ingredient? PrefermentOf(List<(Bake Bake, DoughMasses Masses)> bakes, double grams) =>
        grams > 0 && UsualPrefermentHydration(bakes.Select(each => each.Bake)) is { } hydration
            ? Ingredient.Preferment("preferment", grams, hydration)
            : null;

    private static double? MedianPct(List<(Bake Bake, DoughMasses Masses)> bakes, QuantityColumn column)
    {
        var known = bakes.Where(each => each.Bake[column] > 0).Select(each => each.Masses.PercentOfFlour(each.Bake[column]!.Value)).ToList();
        return known.Count > 0 && known.Count >= LeastShare * bakes.Count ? Quantiles.Median(known) : null;
    }

    // A flour that most bakes name is that flour, and has its own cup or none.
    private static string FlourName(List<(Bake Bake, DoughMasses Masses)> bakes) => bakes
        .Select(each => each.Bake[C.FlourKind])
        .OfType<string>()
        .Where(kind => !string.IsNullOrWhiteSpace(kind))
        .GroupBy(kind => kind)
        .Where(group => group.Count() > LeastShare * bakes.Count)
        .Select(group => group.Key)
        .FirstOrDefault(Ingredient.PlainFlour);
}
