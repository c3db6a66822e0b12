namespace BakeInsights.Tests;

/// <summary>Formulas, yields, yeast and loaves.</summary>
internal static class DoughExamples
{
    private const string PercentPage = "page \"Baker's percentage, part 4\", its table; percentages " + WorkedExample.Apart;
    private const string YieldPage = "glossary \"Teigausbeute (TA)\", rounded there";
    private const string Usda = WorkedExample.Apart + " from USDA Standard Reference";

    private static readonly Formula Poolish = new(
        Ingredient.Flour(900),
        Ingredient.PouredWater(468),
        Ingredient.Yeast(9, YeastKind.Instant),
        Ingredient.Salt(27),
        Ingredient.Preferment(
            "poolish", Ingredient.Flour(468), Ingredient.PouredWater(468), Ingredient.Yeast(0.3, YeastKind.Instant)));

    private static readonly Formula Enriched = new(
        Ingredient.Flour(500),
        Ingredient.Milk(200),
        Ingredient.Egg(100),
        Ingredient.Butter(75),
        Ingredient.Honey(30),
        Ingredient.PouredWater(50));

    // 155 + 370 g flour; 110 g and 80 g water, 120 g milk.
    private static readonly Formula TwoStage = new(
        Ingredient.Flour(370),
        Ingredient.Milk(120),
        Ingredient.PouredWater(80),
        Ingredient.Preferment("first stage", Ingredient.Flour(155), Ingredient.PouredWater(110)));

    public static IEnumerable<WorkedExample> All =>
    [
        new(12, "poolish dough, hydration", "%", Poolish.HydrationPct, 68.421, 0.001, PercentPage),
        new(12, "poolish dough, salt", "%", Poolish.PctOfFlour(IngredientRole.Salt), 1.974, 0.001, PercentPage),
        new(12, "poolish dough, yeast", "%", Poolish.PctOfFlour(IngredientRole.Yeast), 0.680, 0.001, PercentPage),
        new(12, "poolish dough, prefermented flour", "%", Poolish.PrefermentedFlourPct, 34.211, 0.001, PercentPage),
        new(13, "dough yield, first stage 155 g flour, 110 g water", "-", new DoughMasses(155, 110, 0, 0).Yield(0), 171, 0.5, YieldPage),
        new(13, "dough yield, whole dough with milk as liquid", "-", TwoStage.DoughYield, 159, 0.5, YieldPage),
        new(14, "enriched dough, water by composition", "g", Enriched.EffectiveWaterG, 320.995, 0.001, Usda),
        new(14, "enriched dough, effective hydration", "%", Enriched.EffectiveHydrationPct, 64.199, 0.001, Usda),
        new(14, "enriched dough, hydration as stated", "%", Enriched.HydrationPct, 10, 1e-9, WorkedExample.Apart),
        new(14, "enriched dough, dough yield", "-", Enriched.DoughYield, 150, 1e-9, WorkedExample.Apart),
        new(
            15, "4 1/3 cups of all-purpose flour", "g",
            13.0 / 3 * HouseholdWeights.OfFlour(FlourMeasure.CupUnknown)!.GramsPerCup, 541.67, 0.005,
            "USDA Standard Reference 28, 125 g a cup; product " + WorkedExample.Apart),
        new(
            15, "a dipped cup over the spooned cup of bread flour (123 g, HERR-41)", "%",
            100 * ((HouseholdWeights.OfFlour(FlourMeasure.Scooped)!.GramsPerCup / 123) - 1), 11.4, 0.05,
            "USDA Standard Reference 28 and HERR-41"),
        new(15, "a US cup", "mL", MeasureUnits.Cup.ToCanonical(1), 236.588, 0.0005, "231 cubic inches / 16, exact"),
        Yeast("10 g fresh as active dry", YeastEquivalent.Convert(10, YeastKind.Fresh, YeastKind.ActiveDry), 4.0, "culinary-school table"),
        Yeast("10 g fresh as instant", YeastEquivalent.Convert(10, YeastKind.Fresh, YeastKind.Instant), 3.3, "culinary-school table"),
        Yeast("10 g fresh as active dry, other text", OtherText(10, YeastKind.ActiveDry), 5.0, "professional-baking text"),
        Yeast("10 g fresh as instant, other text", OtherText(10, YeastKind.Instant), 3.5, "professional-baking text"),
        Yeast("40 g fresh as instant, other text", OtherText(40, YeastKind.Instant), 14, "professional-baking text"),
        Volume(1_900, 405.71, 4.683),
        Volume(1_810, 245.25, 7.380),
        Volume(300, 47.79, 6.277),
        Volume(140, 51.94, 2.695),
        new(23, "bake loss, 500 g dough, 445 g loaf", "%", Loaves.BakeLossPct(500, 445), 11.0, 1e-9, WorkedExample.Apart),
        new(23, "specific volume, 1900 mL, 445 g", "mL/g", Loaves.SpecificVolume(1_900, 445), 4.270, 0.0005, WorkedExample.Apart),
        new(24, "dough for a 600 g loaf", "g", Loaves.PieceForByRegression(600), 683.09, 0.005, "Bocevska et al., their equation"),
        new(24, "laboratory loaf, 12 % protein", "mL", Loaves.LaboratoryLoafVolume(12), 920, 1e-9, "Western Wheat Quality Laboratory"),
        new(24, "laboratory loaf, 10.5 % protein", "mL", Loaves.LaboratoryLoafVolume(10.5), 822.5, 1e-9, "Western Wheat Quality Laboratory"),
    ];

    private static double OtherText(double freshG, YeastKind to) =>
        YeastConversion.All[1].Convert(freshG, YeastKind.Fresh, to)!.Value;

    private static WorkedExample Yeast(string what, double ours, double theirs, string source) =>
        new(16, what, "g", ours, theirs, 1e-9, source);

    private static WorkedExample Volume(double volumeMl, double grams, double theirs) => new(
        23, FormattableString.Invariant($"specific volume, {volumeMl} mL, {grams} g"), "mL/g",
        Loaves.SpecificVolume(volumeMl, grams), theirs, 0.0006, "student laboratory report, four breads");
}
