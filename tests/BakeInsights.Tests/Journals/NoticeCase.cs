namespace BakeInsights.Tests;

/// <summary>A journal with one thing wrong in it, and the one notice that it must leave.</summary>
internal sealed record NoticeCase(Notice Expected, int Bakes, params string[] Lines)
{
    /// <summary>Whose clocks the times of day are from.</summary>
    public TimeZoneInfo? Zone { get; init; }

    /// <summary>Files beside that of the bakes, each its name and its lines.</summary>
    public IReadOnlyList<(string Name, string[] Lines)> Others { get; init; } = [];

    /// <summary>Reads the journal.</summary>
    public Journal Read() => Csv.ReadFolder([("bakes.csv", Lines), .. Others], Zone);
}

/// <summary>One case or more for each code that the reader has.</summary>
internal static class NoticeCases
{
    private const string Day = "2026-10-01";

    public static IReadOnlyList<NoticeCase> All { get; } =
    [
        new(Refused(2, "baked_on", "DATE_MISSING", "", "The bake has no day.",
                "Write the day as year-month-day, such as 2026-10-31."), 0,
            "bake_id,baked_on", "a,"),
        new(Refused(2, "baked_on", "DATE_UNREAD", "31.11.2026", "This is not a day of the calendar.",
                "Write the day as year-month-day, such as 2026-10-31."), 0,
            "bake_id,baked_on", "a,31.11.2026"),
        new(Refused(2, "baked_on", "DATE_EITHER", "03/04/2026",
                "This is 2026-04-03 or 2026-03-04, and the other days of the file don't say which.",
                "Which is it? Write the day as year-month-day, such as 2026-04-03."), 1,
            "bake_id,baked_on", "a,03/04/2026", $"b,{Day}"),
        new(Refused(2, "baked_on", "DATE_YEAR_SHORT", "31.10.26", "The year has two digits, so it can't be told from day and month.",
                "Write the day as year-month-day with all four digits of the year, such as 2026-10-31."), 0,
            "bake_id,baked_on", "a,31.10.26"),
        new(new("bakes.csv", 2, "baked_on", "DATE_ORDER", Gravity.Noted, "03/04/2026",
                "The day is taken to come first, here and in the rows after it, as other days of the file show.",
                "Nothing, if that is so; otherwise write the days as year-month-day."), 3,
            "bake_id,baked_on", "a,03/04/2026", "b,05/06/2026", "c,31/10/2026"),
        new(new("bakes.csv", 3, "baked_on", "DATE_ORDER", Gravity.Noted, "3-4-2026",
                "The month is taken to come first, here and in the rows after it, as other days of the file show.",
                "Nothing, if that is so; otherwise write the days as year-month-day."), 2,
            "bake_id,baked_on", "a,10-31-2026", "b,3-4-2026"),
        new(Refused(3, "bake_id", "BAKE_ID_TWICE", "a", "This bake_id is already that of bakes.csv, line 2; the first stays.",
                "Give each bake a bake_id of its own, or delete the copy."), 1,
            "bake_id,baked_on", $"a,{Day}", "a,2026-10-02"),
        new(Refused(2, "", "ROW_EMPTY", ",,", "The row has no cell with anything in it.", "Delete the row."), 0,
            "bake_id,baked_on,baker", ",,"),
        new(Refused(2, "", "QUOTE_UNCLOSED", $"a,{Day},\"burnt", "A quotation mark opens a cell and none closes it on this line.",
                "Close the quotation mark, or write it twice where it belongs to the text; keep a note on one line."), 1,
            "bake_id,baked_on,notes", $"a,{Day},\"burnt", "b,2026-10-02,fine"),
        new(new("bakes.csv", 2, "", "QUOTE_STRAY", Gravity.Doubted, $"a,{Day},a 12\" tin",
                "A quotation mark stands inside a cell; it was kept as text.",
                "Put the whole cell in quotation marks and write the inner one twice."), 1,
            "bake_id,baked_on,notes", $"a,{Day},a 12\" tin"),
        new(new("bakes.csv", 2, "", "CELLS_TOO_MANY", Gravity.Doubted, "dark, nearly burnt",
                "The row has 5 cells and the header 3; the cells beyond the header were not read.",
                "Put a cell that holds a comma in quotation marks."), 1,
            "bake_id,baked_on,notes", $"a,{Day},long bake,dark, nearly burnt"),
        .. OfQuantities,
        .. OfWords,
        .. OfHeaders,
        .. SideNoticeCases.All,
        .. PlausibilityNoticeCases.All,
    ];

    /// <summary>What all cases expect, and what only a long journal leaves.</summary>
    public static IReadOnlyList<Notice> AllExpected { get; } =
        [.. All.Select(each => each.Expected), LongJournalNoticeTests.Neighbours, LongJournalNoticeTests.PassedOver];

    private static IReadOnlyList<NoticeCase> OfQuantities =>
    [
        new(Unread("dough_temp_c", "NUMBER_UNREAD", "warm", "This is not a number, nor one with a unit behind it.",
                "Write a number such as 24.5, with a unit behind it if it is not the column's."), 1,
            "baked_on,dough_temp_c", $"{Day},warm"),
        new(Unread("flour_g", "NUMBER_EITHER", "1,250 g", "This is 1250 or 1.25, and the other numbers of the file don't say which.",
                "Which is it? Write it without a sign between the thousands, such as 1250."), 1,
            "baked_on,flour_g", $"{Day},\"1,250 g\""),
        new(Unread("dough_temp", "UNIT_MISSING", "76", "Neither the cell nor the column's name says the unit.",
                "Name the column dough_temp_c, or write the unit behind each number."), 1,
            "baked_on,dough_temp", $"{Day},76"),
        new(Unread("dough_temp_c", "UNIT_WRONG", "24 Min", "'min' is not a unit that this column can be measured in.",
                "Correct the unit."), 1,
            "baked_on,dough_temp_c", $"{Day},24 Min"),
        new(Unread("dough_temp_f", "OUT_OF_RANGE", "240", "115.56 °C is outside 0 to 50 °C, the range this column can mean.",
                "Look for a slipped decimal point or another unit, and correct the cell."), 1,
            "baked_on,dough_temp_f", $"{Day},240"),
        new(Unread("crumb_score", "OUT_OF_RANGE", "-1", "-1 is outside 0 to 1000, the range this column can mean.",
                "Look for a slipped decimal point or another unit, and correct the cell."), 1,
            "baked_on,crumb_score", $"{Day},-1"),
        new(Unread("mixed_at", "TIME_UNREAD", "7.40", "This is not a time of day.",
                "Write hours and minutes, such as 19:40 or 7:40 pm."), 1,
            "baked_on,mixed_at", $"{Day},7.40"),
        new(new("bakes.csv", 2, "rise_min", "SPAN_TAKEN", Gravity.Noted, "19:40 to 01:10:30",
                "rise_min is empty; the 330.5 min from mixed_at to ready_at were taken.",
                "Nothing, if both times belong together; otherwise write rise_min."), 1,
            "baked_on,mixed_at,ready_at", $"{Day},19:40,1:10:30"),
        new(new("bakes.csv", 2, "rise_min", "CLOCK_CHANGED", Gravity.Doubted, "01:00 to 02:30",
                "The clocks were changed that night, and mixed_at or ready_at came twice or not at all; rise_min stays empty.",
                "Write rise_min."), 1,
            "baked_on,mixed_at,ready_at", "2026-03-29,1:00,2:30") { Zone = ClockSpanTests.Zone },
        new(Unread("bake_min", "OUT_OF_RANGE", "06:00 to 19:40", "820 min is outside 3 to 240 min, the range this column can mean.",
                "Look for a slipped decimal point or another unit, and correct the cell."), 1,
            "baked_on,loaded_at,out_at", $"{Day},6:00,19:40"),
        new(Unread("fat_g", "CUP_WEIGHT_UNKNOWN", "2 tbsp", "No weight of a cup or spoon of this is published.",
                "Weigh it, and write grams or ounces."), 1,
            "baked_on,fat_g", $"{Day},2 tbsp"),
        new(new("bakes.csv", 2, "flour_g", "CUP_FILLING_UNKNOWN", Gravity.Doubted, "4 cups",
                "How the cup was filled is not written; 125 g a cup was taken, and cups filled in one way or another differ by about 8 %.",
                "Write spooned, scooped or sifted in flour_measure, or weigh the flour."), 1,
            "baked_on,flour_g", $"{Day},4 cups"),
    ];

    private static IReadOnlyList<NoticeCase> OfWords =>
    [
        new(Unread("press_test", "CHOICE_UNKNOWN", "bouncy", "The column does not know this word.",
                "Write one of springs_back, slow_return, keeps_dent, collapses."), 1,
            "baked_on,press_test", $"{Day},bouncy"),
        new(new("bakes.csv", 2, "yeast_oz", "YEAST_KIND_MISSING", Gravity.Doubted, "0.2",
                "The kind of yeast is not written; its percentage is not worked out.",
                "Write fresh, active_dry or instant in yeast_kind."), 1,
            "baked_on,yeast_oz,yeast_kind", $"{Day},0.2,"),
    ];

    private static IReadOnlyList<NoticeCase> OfHeaders =>
    [
        new(Form(1, "Cells are separated by ';', numbers have a decimal comma."), 1,
            "baked_on;dough_temp_c", $"{Day};24,5"),
        new(Form(1, "Cells are separated by a tab."), 1, "baked_on\tdough_temp_c", $"{Day}\t24.5"),
        new(Form(1, "Cells are separated by '|', some numbers have a decimal comma and some a decimal point."), 2,
            "bake_id|baked_on|dough_temp_c", $"a|{Day}|24.5", $"b|{Day}|24,5"),
        new(Form(3, "Numbers have a decimal comma."), 2,
            "bake_id,baked_on,dough_temp_c", $"a,{Day},24", $"b,{Day},\"24,5\""),
        new(new("bakes.csv", 1, "Yeast_oz", "YEAST_KIND_MISSING", Gravity.Doubted, "Yeast_oz",
                "The kind of yeast is not written; its percentage is not worked out.",
                "Write fresh, active_dry or instant in yeast_kind."), 2,
            "bake_id,baked_on,Yeast_oz", $"a,{Day},0.2", $"b,{Day},0.2"),
        new(Header("oven_place", "COLUMN_OWN", Gravity.Noted,
                "The toolkit has no meaning for this column; its cells are kept as text.",
                "Nothing, if the column is your own; otherwise correct its name."), 1,
            "baked_on,oven_place", $"{Day},top"),
        new(Header("Bulk (min)", "COLUMN_READ_AS", Gravity.Noted,
                "Read as rise_min.", "Nothing, if that is meant; otherwise give the column another name."), 1,
            "baked_on,Bulk (min)", $"{Day},95"),
        new(Header("Volume (mL)", "COLUMN_TAKEN", Gravity.Noted,
                "It could be loaf_volume_ml, but another column holds that; its cells are kept as text.",
                "Nothing, if the column is your own; otherwise keep the right one of the two."), 1,
            "baked_on,Volume (mL),loaf_volume_ml", $"{Day},3000,2960"),
        new(Header("Temp (°C)", "COLUMN_AMBIGUOUS", Gravity.Doubted,
                "It could be dough_temp_c or room_temp_c or oven_temp_c; its cells are kept as text.",
                "Give the column one of these names."), 1,
            "baked_on,Temp (°C)", $"{Day},24"),
        new(Header("flour_oz", "COLUMN_TWICE", Gravity.Unread,
                "The column 'flour_g' already holds this; the cells of the second one are not read.",
                "Delete one of the two columns."), 1,
            "baked_on,flour_g,flour_oz", $"{Day},500,9"),
        new(Header("salt_tsp", "CUP_WEIGHT_TAKEN", Gravity.Noted,
                "Taken as 292 g a cup (USDA National Nutrient Database for Standard Reference 28 (2015), household weights, table salt).",
                "Nothing, or weigh it to be surer."), 1,
            "baked_on,salt_tsp", $"{Day},2"),
        new(Header("flour_cups", "FLOUR_BY_CUP", Gravity.Noted,
                "Flour by the cup is turned into grams by the way of filling in flour_measure.",
                "Nothing, or weigh the flour to be surer: cups filled alike still differ by about 4 %."), 1,
            "baked_on,flour_cups,flour_measure", $"{Day},4,spooned"),
    ];

    private static Notice Refused(int line, string column, string code, string text, string message, string remedy) =>
        new("bakes.csv", line, column, code, Gravity.Refused, text, message, remedy);

    private static Notice Unread(string column, string code, string text, string message, string remedy) =>
        new("bakes.csv", 2, column, code, Gravity.Unread, text, message, remedy);

    private static Notice Header(string column, string code, Gravity gravity, string message, string remedy) =>
        new("bakes.csv", 1, column, code, gravity, column, message, remedy);

    private static Notice Form(int line, string message) => new(
        "bakes.csv", line, "", "FILE_FORM", Gravity.Noted, "", message,
        "Nothing, if that is so; otherwise save the table as CSV (UTF-8) with commas and decimal points.");
}
