namespace BakeInsights;

/// <summary>Other names that bakers give to columns.</summary>
/// <remarks>
/// One line for each column: its canonical name without the unit, and what else it is called (common practice, no
/// source). Left out are names that say only a part ("butter" is not all fat) and those of a temperature aimed at
/// ("DDT", desired dough temperature): what was wished for is not what was measured.
/// </remarks>
internal static class HeaderAliases
{
    private static readonly string[] Lines =
    [
        "bake_id: id, bake_no, bake_number, batch_no, batch_number",
        "baked_on: date, day, bake_date, baking_date, date_baked",
        "baker: baked_by, made_by",
        "formula: recipe, formula_name, recipe_name",
        "flour: flour_weight, flour_mass, flour_amount",
        "flour_kind: flour_type, type_of_flour",
        "flour_measure: flour_measured, flour_method, how_flour_was_measured",
        "water: water_weight, water_mass, water_amount",
        "salt: salt_weight, salt_mass, salt_amount",
        "yeast: yeast_weight, yeast_mass, yeast_amount",
        "yeast_kind: yeast_type, type_of_yeast",
        "sugar: sugar_weight, sugar_mass, sugar_amount",
        "fat: fat_weight, fat_mass, fat_amount",
        "milk: milk_weight, milk_mass, milk_amount",
        "preferment: levain, starter, sourdough_starter, poolish, biga, sponge, preferment_weight, levain_weight, starter_weight",
        "preferment_hydration: levain_hydration, starter_hydration, poolish_hydration, biga_hydration, sponge_hydration",
        "room_temp: room, room_temperature, kitchen_temp, kitchen_temperature, air_temp, air_temperature, ambient_temp, ambient_temperature",
        "flour_temp: flour_temperature",
        "water_temp: water_temperature",
        "preferment_temp: preferment_temperature, levain_temp, levain_temperature, starter_temp, starter_temperature",
        "dough_temp: dough_temperature, final_dough_temp, final_dough_temperature, fdt",
        "rise_temp: rise_temperature, rising_temp, bulk_temp, bulk_temperature",
        "proof_temp: proof_temperature, proofing_temp, proofing_temperature, proofer_temp, proofer_temperature",
        "oven_temp: oven, oven_temperature, bake_temp, bake_temperature, baking_temp, baking_temperature",
        "core_temp: core_temperature, internal_temp, internal_temperature, crumb_temp, crumb_temperature",
        "mixed_at: end_of_mixing, end_of_mix, mixing_ended, mixed",
        "ready_at: dough_ready, ready",
        "loaded_at: loaded, into_oven, in_oven_at",
        "out_at: out_of_oven, unloaded, unloaded_at",
        "mix: mix_time, mixing, mixing_time",
        "rise: rise_time, rising_time, first_rise, first_rise_time, bulk, bulk_time, bulk_rise, bulk_ferment, bulk_fermentation, "
            + "bulk_fermentation_time, first_fermentation, primary_fermentation, floor_time",
        "rise_not_ready: bulk_not_ready, first_rise_not_ready",
        "cold: cold_time, retard, retard_time, retarding_time, fridge, fridge_time",
        "proof: proof_time, proofing, proofing_time, final_proof, final_proof_time, second_rise, second_rise_time, final_rise",
        "proof_not_ready: final_proof_not_ready, second_rise_not_ready",
        "press_test: poke_test, finger_test, dent_test",
        "bake: bake_time, baking, baking_time, time_in_oven, oven_time",
        "cool: cool_time, cooling, cooling_time",
        "steam: steamed, with_steam",
        "dough: dough_weight, dough_mass, total_dough, total_dough_weight",
        "loaf_count: loaves, number_of_loaves, loaf_number",
        "loaf: loaf_weight, loaf_mass, bread_weight, baked_weight, cooled_weight",
        "loaf_volume: volume, bread_volume, volume_of_loaf",
        "crumb_score: crumb, crumb_rating",
        "crust_score: crust, crust_rating",
        "flavour_score: flavour, flavor, taste, flavor_score, taste_score, flavour_rating, flavor_rating",
        "group: bench, class, batch, team",
        "notes: note, comment, comments, remark, remarks, observations",
    ];

    // Names that could as well be one column as another: no guess is made.
    private static readonly string[] AmbiguousLines =
    [
        "temp: dough_temp, room_temp, oven_temp",
        "temperature: dough_temp, room_temp, oven_temp",
        "time: rise, proof, bake",
        "fermentation: rise, proof",
        "fermentation_time: rise, proof",
        "weight: dough, loaf",
        "score: crumb_score, crust_score, flavour_score",
        "rating: crumb_score, crust_score, flavour_score",
    ];

    private static readonly Dictionary<string, IReadOnlyList<string>> ByColumn =
        Lines.Select(Parts).ToDictionary(parts => parts.First, parts => parts.Others);

    /// <summary>Each ambiguous name and the columns that it could stand for.</summary>
    public static IReadOnlyList<(string Name, IReadOnlyList<string> Columns)> Ambiguous { get; } =
        [.. AmbiguousLines.Select(Parts)];

    /// <summary>The other names of a column; none where it has none.</summary>
    /// <param name="column">Its canonical name without the unit.</param>
    public static IReadOnlyList<string> Of(string column) => ByColumn.GetValueOrDefault(column, []);

    private static (string First, IReadOnlyList<string> Others) Parts(string line)
    {
        var parts = line.Split(": ");
        return (parts[0], parts[1].Split(", "));
    }
}
