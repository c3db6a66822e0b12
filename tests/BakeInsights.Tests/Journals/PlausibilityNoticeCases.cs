namespace BakeInsights.Tests;

/// <summary>Rows whose values are odd by themselves or against each other, and what the reader says of each.</summary>
internal static class PlausibilityNoticeCases
{
    private const string Day = "2026-10-01";
    private const string Dough = "baked_on,flour_g,flour_temp_c,water_g,water_temp_c,dough_temp_c";
    private const string Slip = "Correct the decimal point; nothing to do if it is so.";
    private const string Look = "Look again; nothing to do if it is so.";

    public static IReadOnlyList<NoticeCase> All { get; } =
    [
        .. OfTemperatures,
        .. OfRatios,
        .. OfLoaves,
        .. OfTimes,
        .. OfMedians,
    ];

    private static IReadOnlyList<NoticeCase> OfTemperatures =>
    [
        new(Unread("dough_temp_c", "FAHRENHEIT_LIKELY", "76",
                "76 °C is outside 0 to 50 °C, the range this column can mean; as °F it would be 24.4 °C.",
                "Write the unit behind the number, as in 76F, or end the column's name in _f."), 1,
            "baked_on,dough_temp_c", $"{Day},76"),
        new(Doubted("oven_temp_c", "FAHRENHEIT_POSSIBLE", "350",
                "350 °C is outside 175 to 260 °C, where it mostly lies; as °F it would be 176.7 °C.",
                "If the number is in °F, write the unit behind it, as in 60F; nothing to do if it is in °C."), 1,
            "baked_on,oven_temp_c", $"{Day},350"),
        new(Doubted("water_temp_c", "FAHRENHEIT_POSSIBLE", "60",
                "60 °C is outside 1 to 45 °C, where it mostly lies; as °F it would be 15.6 °C.",
                "If the number is in °F, write the unit behind it, as in 60F; nothing to do if it is in °C."), 1,
            Dough, $"{Day},1000,20,650,60,21"),
        new(Unread("dough_temp_c", "DECIMAL_SLIP", "245",
                "245 °C is outside 0 to 50 °C, the range this column can mean; with the decimal point moved it would be 24.5 °C.",
                "Correct the decimal point, or the unit."), 1,
            "baked_on,dough_temp_c", $"{Day},245"),
        new(Unread("dough_temp_f", "DECIMAL_SLIP", "760",
                "404.4 °C is outside 0 to 50 °C, the range this column can mean; with the decimal point moved it would be 24.4 °C.",
                "Correct the decimal point, or the unit."), 1,
            "baked_on,dough_temp_f", $"{Day},760"),
        new(Doubted("dough_temp_c", "VALUE_UNUSUAL", "33", "33 °C is unusual: mostly it is 18 to 30 °C.", Look), 1,
            "baked_on,dough_temp_c", $"{Day},33"),
        new(Doubted("Proof", "VALUE_UNUSUAL", "5 h", "300 min is unusual: mostly it is 20 to 240 min.", Look), 1,
            "baked_on,Proof", $"{Day},5 h"),
        new(Doubted("water_temp_c", "WATER_HOT", "48",
                "Water of 48 °C is hotter than yeast stands; 45 °C is the most that is usual.",
                "Look again; nothing to do if it cooled before the yeast met it."), 1,
            "baked_on,water_temp_c", $"{Day},48"),

        // 1,760 kJ/K of flour at 20 °C, 2,717 kJ/K of water at 30 °C (per 1,000 of each unit), and 15.1 kJ of wetting:
        // (35.2 + 81.51 + 15.1) / 4.477 = 29.4 °C, worked by hand.
        new(Doubted("dough_temp_c", "DOUGH_TEMP_OFF", "21",
                "The dough is at 21 °C, and the temperatures of flour and water make it about 29.4 °C.",
                "Look which temperature of the row is mistyped."), 1,
            Dough, $"{Day},1000,20,650,30,21"),
    ];

    private static IReadOnlyList<NoticeCase> OfRatios =>
    [
        new(Doubted("water_g", "RATIO_UNUSUAL", "480", "The hydration comes to 96 % of flour; mostly it is 50 to 90.",
                "Look again at water_g and flour_g; nothing to do if it is so."), 1,
            "baked_on,flour_g,water_g", $"{Day},500,480"),
        new(Unread("water_g", "RATIO_IMPOSSIBLE", "800", "The hydration comes to 160 % of flour; it can only be 30 to 150.",
                "Correct water_g or flour_g."), 1,
            "baked_on,flour_g,water_g", $"{Day},500,800"),
        new(Unread("Yeast (g)", "RATIO_SLIP", "40",
                "The instant yeast comes to 8 % of flour; with a decimal point moved it would be 0.8.",
                "Correct the decimal point of yeast_g or flour_g."), 1,
            "baked_on,flour_g,Yeast (g),yeast_kind", $"{Day},500,40,instant"),
        new(Unread("flour_g", "FLOUR_OFF", "50", "Water comes to 650 % of this flour and salt to 20 %: neither can be.",
                "Correct flour_g, or the unit of the column."), 1,
            "baked_on,flour_g,water_g,salt_g", $"{Day},50,325,10"),
    ];

    private static IReadOnlyList<NoticeCase> OfLoaves =>
    [
        new(Unread("dough_g", "LOAVES_HEAVIER", "850", "The loaves weigh 1450 g and the dough 850 g; no oven adds weight.",
                "Correct loaf_g, loaf_count or dough_g: the dough is that of all loaves, the loaf is one."), 1,
            "baked_on,dough_g,loaf_count,loaf_g", $"{Day},850,2,725"),
        new(Unread("loaf_volume_ml", "LOAF_TOO_SMALL", "600", "A gram of loaf has 0.83 mL; dough that never rose has 0.9 mL.",
                "Correct loaf_volume_ml or loaf_g."), 1,
            "baked_on,loaf_g,loaf_volume_ml", $"{Day},725,600"),
    ];

    private static IReadOnlyList<NoticeCase> OfMedians =>
    [
        new(Doubted("yeast_g", "DECIMAL_SLIP_POSSIBLE", "0.6",
                "0.06 % of flour is far from the journal's median, 0.6 % of flour; with the decimal point moved it would be 0.6 % of flour.",
                Slip), 8,
            ["bake_id,baked_on,flour_g,yeast_g,yeast_kind", $"a,{Day},1000,0.6,instant", .. Same($"{Day},1000,6,instant")]),
        new(Doubted("rise_min", "DECIMAL_SLIP_POSSIBLE", "950",
                "950 min is far from the journal's median, 90 min; with the decimal point moved it would be 95 min.",
                Slip), 8,
            ["bake_id,baked_on,rise_min", $"a,{Day},950", .. Same($"{Day},90")]),
    ];

    // Seven more bakes that are all alike.
    private static IEnumerable<string> Same(string cells) => Enumerable.Range(1, 7).Select(place => $"s{place},{cells}");

    private static IReadOnlyList<NoticeCase> OfTimes =>
    [
        new(Unread("rise_not_ready_min", "LOOKS_SWAPPED", "95",
                "Not ready at 95 min and ready at 90 min can't both be; the second was taken as exact.",
                "Correct the two times: the look that found it not ready comes first."), 1,
            "baked_on,rise_min,rise_not_ready_min", $"{Day},90,95"),
        new(new("bakes.csv", 2, "proof_not_ready_min", "LOOKS_FAR_APART", Gravity.Noted, "30",
                "Between the looks at 30 min and 60 min lies 50 % of the time.",
                "Nothing for this bake; look more often towards the end of the next."), 1,
            "baked_on,proof_min,proof_not_ready_min", $"{Day},60,30"),
        new(Doubted("rise_h", "RISE_LONG", "14",
                "840 min is long for a rise that is not in the cold: mostly it is up to 480 min.",
                "Write cold_min if part of it was in the cold; otherwise look again."), 1,
            "baked_on,rise_h", $"{Day},14"),
        new(Doubted("ready_at", "READY_BEFORE_MIXED", "9:10",
                "Ready at an earlier time of day than mixed: that is 1390 min by the clock, too long for this rise.",
                "Correct mixed_at or ready_at."), 1,
            "baked_on,mixed_at,ready_at,rise_min", $"{Day},10:00,9:10,90"),
    ];

    private static Notice Unread(string column, string code, string text, string message, string remedy) =>
        new("bakes.csv", 2, column, code, Gravity.Unread, text, message, remedy);

    private static Notice Doubted(string column, string code, string text, string message, string remedy) =>
        new("bakes.csv", 2, column, code, Gravity.Doubted, text, message, remedy);
}
