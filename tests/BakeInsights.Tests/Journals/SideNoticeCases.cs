namespace BakeInsights.Tests;

/// <summary>Cases of the files beside that of the bakes.</summary>
internal static class SideNoticeCases
{
    private const string Day = "2026-10-01";

    public static IReadOnlyList<NoticeCase> All { get; } =
    [
        Case(new("loaves.csv", 1, "", "FILE_UNREAD", Gravity.Unread, "",
                "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.", "Save the table as CSV (UTF-8) and read that."),
            "loaves.csv", "bake_id,loaf", "a,\0"),
        Case(new("probe.csv", 1, "", "FILE_UNREAD", Gravity.Unread, "",
                "The first line has no column minutes, so it is not the header of a table of probe readings.",
                "Start the file with a line of column names, bake_id, minutes, temp_c among them."),
            "probe.csv", "bake_id,temp_c", "a,30"),
        Case(Refused("loaves.csv", 2, "loaf", "CELL_NEEDED", "", "The row can't do without this cell.", "Write it, or delete the row."),
            "loaves.csv", "bake_id,loaf", "a,"),
        Case(Refused("loaves.csv", 2, "bake_id", "BAKE_UNKNOWN", "b", "No bake that was kept has this bake_id.",
                "Correct the bake_id, or see why the bake was set aside."),
            "loaves.csv", "bake_id,loaf", "b,1"),
        Case(Refused("rise.csv", 4, "", "ROW_TWICE", "a, rise, 30", "Line 2 already has this bake_id, stage, minutes; the first stays.",
                "Delete the copy, or correct what tells the rows apart."),
            "rise.csv", "bake_id,stage,minutes,height_mm", "a,rise,30,60", "a,proof,30,61", "a,RISE,0:30,62"),
        Case(Refused("attributes.csv", 2, "high", "SCALE_EMPTY", "1", "The highest score is not above the lowest, 9.",
                "Write the lowest score in low and the highest in high."),
            "attributes.csv", "attribute,low,high", "crumb,9,1"),
        Case(Refused("scores.csv", 3, "score", "SCORE_OFF_SCALE", "9.5", "The scale of 'crumb' goes from 1 to 9.",
                "Correct the score, or the scale in attributes.csv."),
            "scores.csv", "bake_id,judge,attribute,score", "a,x,crumb,9", "a,y,crumb,9.5") with
        {
            Others =
            [
                ("attributes.csv", ["attribute,low,high,kind", "crumb,1,9,more_is_better"]),
                ("scores.csv", ["bake_id,judge,attribute,score", "a,x,crumb,9", "a,y,crumb,9.5", "a,z,crust,99"]),
            ],
        },
        Case(Refused("rise.csv", 2, "", "READING_EMPTY", "", "The reading has neither a height, nor a volume, nor a temperature.",
                "Write what was read, or delete the row."),
            "rise.csv", "bake_id,minutes,height_mm", "a,30,"),
        Case(Refused("formulas.csv", 2, "", "AMOUNT_MISSING", "", "The ingredient has neither a percentage nor an amount.",
                "Write one of them, or delete the row."),
            "formulas.csv", "formula,ingredient,percent", "house,salt,"),
        Case(new("bakes.csv", 2, "", "LOAVES_TAKEN", Gravity.Noted, "",
                "Empty here and taken from the loaves of this bake in loaves.csv, 2 of them: loaf_count, loaf_g.",
                "Nothing, if those are all its loaves."),
            "loaves.csv", "bake_id,loaf,loaf_g", "a,1,800", "a,2,810"),
        Case(new("bakes.csv", 2, "loaf_count", "LOAF_COUNT_DIFFERS", Gravity.Doubted, "3",
                "The number of this bake's loaves in loaves.csv is 2.",
                "Correct loaf_count, or write the other loaves in loaves.csv."),
            "loaves.csv", "bake_id,loaf", "a,1", "a,2") with { Lines = ["bake_id,baked_on,loaf_count", $"a,{Day},3"] },
    ];

    private static NoticeCase Case(Notice expected, string file, params string[] lines) =>
        new(expected, 1, "bake_id,baked_on", $"a,{Day}") { Others = [(file, lines)] };

    private static Notice Refused(string file, int line, string column, string code, string text, string message, string remedy) =>
        new(file, line, column, code, Gravity.Refused, text, message, remedy);
}
