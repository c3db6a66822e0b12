namespace BakeInsights;

/// <summary>Published weights of a cup, by ingredient and, for flour, by the way the cup was filled.</summary>
/// <remarks>Spoons hold a sixteenth (tablespoon) and a forty-eighth (teaspoon) of the cup.</remarks>
public static class HouseholdWeights
{
    /// <summary>
    /// How a cup scatters about the other cups of the same hand: ten volunteers who dipped and swept differed by less
    /// than 3 % within one person ("Taking multiple measures", a page on measuring flour).
    /// </summary>
    public const double CupToCupRelativeSd = 0.03;

    private const string Usda = "USDA National Nutrient Database for Standard Reference 28 (2015), household weights";

    private const string Herr41 =
        "USDA Home Economics Research Report 41 (Fulton, Matthews and Davis 1977)";

    private static readonly Dictionary<FlourMeasure, HouseholdWeight> Flour = new()
    {
        [FlourMeasure.Spooned] = new(126, Herr41 + ", all-purpose flour, spooned unsifted", Spread(FlourMeasure.Spooned)),
        [FlourMeasure.Sifted] = new(116, Herr41 + ", all-purpose flour, sifted and spooned", Spread(FlourMeasure.Sifted)),

        // The only dipped weight published for a white flour; home-economics papers of the 1960s, from memory,
        // give 140 to 145 g for all-purpose.
        [FlourMeasure.Scooped] = new(137, Usda + ", bread flour, unsifted and dipped", Spread(FlourMeasure.Scooped)),
        [FlourMeasure.CupUnknown] = new(125, Usda + ", all-purpose flour", Spread(FlourMeasure.CupUnknown)),
    };

    private static readonly Dictionary<string, HouseholdWeight> Others = new()
    {
        ["water"] = new(237, Usda),
        ["salt"] = new(292, Usda + ", table salt"),
        ["sugar"] = new(200, Usda + ", granulated sugar"),
        ["milk"] = new(244, Usda + ", whole milk"),
        ["egg"] = new(243, Usda + ", whole egg"),
        ["honey"] = new(339, Usda),
        ["butter"] = new(227, Usda),
        ["oil"] = new(218, Usda + ", vegetable oil"),
        ["whole-wheat flour"] = new(120, Usda),
        ["dark rye flour"] = new(128, Usda),
        ["light rye flour"] = new(102, Usda),
        ["semolina"] = new(167, Usda),

        // The Standard Reference's own 4.0 g a teaspoon disagrees with its packet (7.2 g for 2 1/4 tsp) by a quarter.
        ["yeast"] = new(142, Herr41 + ", active dry yeast"),
    };

    /// <summary>A cup of flour filled in this way; null when the flour was weighed, for then there is no cup.</summary>
    public static HouseholdWeight? OfFlour(FlourMeasure measure) => Flour.GetValueOrDefault(measure);

    /// <summary>A cup of another ingredient, by its name or its column's stem ("butter", "yeast"); null where none is published.</summary>
    public static HouseholdWeight? Of(string ingredient) => Others.GetValueOrDefault(ingredient);

    // What is known of the spread of cups is how people differ: the part that a bake's cups share.
    private static CupSpread Spread(FlourMeasure measure) => new(FlourFilling.SpreadPct(measure) / 100, CupToCupRelativeSd);
}
