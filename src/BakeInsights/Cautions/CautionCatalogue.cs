using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>The usual cautions of baking, and which of them an occasion calls for.</summary>
/// <remarks>They inform; they rule on nothing. A calculation is not a food-safety decision.</remarks>
public static class CautionCatalogue
{
    /// <summary>To be shown wherever a caution is.</summary>
    public const string Deference =
        "Your local food code, your kitchen's rules and licensed practice decide; where they say otherwise, follow them.";

    private const string CommonPractice = "common practice, no source";

    /// <summary>Raw flour and raw dough.</summary>
    public static Caution RawFlour { get; } = new(
        "Raw flour and dough",
        "Flour is a raw food. Nobody tastes dough or batter before it is baked, and dough is no toy. Keep flour dust away "
        + "from food that is ready to eat, and wash hands, bowls and counters after. Heating flour at home does not "
        + "make it safe.",
        "always",
        ["CDC, advice on raw flour and dough", "FDA, advice on flour as a raw food (heat treatment at home)"],
        _ => true);

    /// <summary>Milk or egg in a dough that stays warm for long.</summary>
    public static Caution WarmHolds { get; } = new(
        "Long warm rise with milk or egg",
        "This dough has milk or egg in it and stays warm for long. Plan the rise: part of it in the refrigerator, or less "
        + "time. Two rules are in use and they differ: at home two hours between 40 and 140 °F (4 and 60 °C), one hour "
        + "above 90 °F (32 °C); in retail four hours from a start at 41 °F (5 °C), with the time written on the food. "
        + "Whether a dough falls under either is for the local authority to say.",
        "milk or egg, and more than two warm hours (one above 90 °F)",
        ["USDA FSIS, advice on food left out at home", "FDA Food Code 3-501.19, time as a public health control"],
        occasion => occasion.HasMilkOrEgg && occasion.WarmMinutes > WarmHold.LimitAt(occasion.WarmestPlace));

    /// <summary>Hot ovens and steam.</summary>
    public static Caution Burns { get; } = new(
        "Burns and steam",
        "Open ovens and lids away from you and let the steam go first. Use dry mitts, for a wet one lets the heat "
        + "through. Long sleeves, closed shoes, a dry floor.",
        "always",
        ["OSHA, safety advice for young restaurant workers, cooking"],
        _ => true);

    /// <summary>Allergens.</summary>
    public static Caution Allergens { get; } = new(
        "Allergens",
        "Say in plain words what is in the bread before anyone handles or eats it. US law names nine: milk, egg, fish, "
        + "crustacean shellfish, tree nuts, wheat, peanuts, soybeans and sesame. In bread look for wheat, milk, egg, "
        + "sesame, soy (in flour and lecithin) and nuts; read the label of every package.",
        "others bake or eat along, or bread is sold",
        ["FDA, major food allergens; FASTER Act of 2021 (sesame since 1 January 2023)"],
        occasion => occasion.WithOthers || occasion.ForSale);

    /// <summary>Mould.</summary>
    public static Caution Mould { get; } = new(
        "Mould",
        "Baking kills mould; its spores come afterwards, from air, hands and knives. Let bread go cold before it is "
        + "bagged, for what condenses in the bag feeds them. Throw a mouldy loaf away whole.",
        "always",
        ["Pacher et al. 2022, Foods 11:3021, review of bread spoilage", "USDA FSIS, advice on moulds on food, from memory"],
        _ => true);

    /// <summary>Rope.</summary>
    public static Caution Rope { get; } = new(
        "Rope",
        "A crumb that smells of over-ripe pineapple and draws threads has rope, from spores that live through baking. It "
        + "likes moist, mild bread kept warm. Throw the bread away, clean what it touched, and put no old bread or "
        + "dough of it into the next batch.",
        "always",
        ["Pacher et al. 2022, Foods 11:3021, review of rope spoilage"],
        _ => true);

    /// <summary>Cutting hot bread.</summary>
    public static Caution Cutting { get; } = new(
        "Cutting before cooling",
        "Let a loaf rest half an hour to an hour before the knife: inside it is still steam, and the crumb still sets. Weigh "
        + "and measure it cold too.",
        "always",
        [CommonPractice],
        _ => true);

    /// <summary>Probe thermometers.</summary>
    public static Caution Thermometer { get; } = new(
        "Thermometer",
        "Check the probe in a slush of crushed ice and water: it should read 0 °C (32 °F) to within 1 °C (2 °F). A probe "
        + "that is off moves every temperature in the journal.",
        "always",
        ["FDA Food Code 4-203.11, accuracy of food thermometers"],
        _ => true);

    /// <summary>Flour by the cup.</summary>
    public static Caution Cups { get; } = new(
        "Flour by the cup",
        "A scooped cup of flour is heavier than one that was fluffed, spooned and levelled. Agree on one way before the "
        + "class starts, and write down which.",
        "flour is measured by the cup",
        [CommonPractice],
        occasion => occasion.FlourByCup);

    /// <summary>Pieces of one weight.</summary>
    public static Caution EvenPieces { get; } = new(
        "Pieces of one weight",
        "Scale the loaves of one batch alike, so that they are done at the same time.",
        "others bake along",
        [CommonPractice],
        occasion => occasion.WithOthers);

    /// <summary>Selling.</summary>
    public static Caution Selling { get; } = new(
        "Selling bread",
        "Rules for bread from home kitchens differ from state to state, in what may be sold, to whom, and what the label "
        + "must say. Ask your authority before the first sale.",
        "bread is sold",
        ["each state's cottage-food statute"],
        occasion => occasion.ForSale);

    /// <summary>All of them.</summary>
    public static ImmutableArray<Caution> All { get; } =
    [
        RawFlour, WarmHolds, Burns, Allergens, Mould, Rope, Cutting, Thermometer, Cups, EvenPieces, Selling,
    ];

    /// <summary>Those that an occasion calls for, in the catalogue's order.</summary>
    public static ImmutableArray<Caution> For(Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return [.. All.Where(caution => caution.AppliesTo(occasion))];
    }
}
