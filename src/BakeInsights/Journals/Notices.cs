using System.Globalization;

namespace BakeInsights;

/// <summary>Every remark that the reader can make: all codes and all words in one place.</summary>
internal static class Notices
{
    public static Notice DateMissing(SourceLine at) => Row(
        at, BakeColumns.BakedOn.Name, "DATE_MISSING", "", "The bake has no day.",
        "Write the day as year-month-day, such as 2026-10-31.");

    public static Notice DateUnread(SourceLine at, string text) => Row(
        at, BakeColumns.BakedOn.Name, "DATE_UNREAD", text, "This is not a day of the calendar.",
        "Write the day as year-month-day, such as 2026-10-31.");

    public static Notice DateEither(SourceLine at, string column, string text, WrittenDay day) => Row(
        at, column, "DATE_EITHER", text,
        $"This is {Day(day.DayFirst)} or {Day(day.MonthFirst)}, and the other days of the file don't say which.",
        $"Which is it? Write the day as year-month-day, such as {Day(day.DayFirst)}.");

    public static Notice DateYearShort(SourceLine at, string column, string text) => Row(
        at, column, "DATE_YEAR_SHORT", text, "The year has two digits, so it can't be told from day and month.",
        "Write the day as year-month-day with all four digits of the year, such as 2026-10-31.");

    public static Notice DateOrder(SourceLine at, string column, string text, DayOrder order) => new(
        at.File, at.Line, column, "DATE_ORDER", Gravity.Noted, text,
        $"The {(order == DayOrder.DayFirst ? "day" : "month")} is taken to come first, here and in the rows after it, as other days of the file show.",
        "Nothing, if that is so; otherwise write the days as year-month-day.");

    public static Notice FileForm(SourceLine at, FileForm form, DecimalMark mark)
    {
        var (separator, encoding) = (form.Separator == '\t' ? "a tab" : $"'{form.Separator}'", EncodingName(form));
        string?[] parts =
        [
            form.Separator == ',' ? null : $"cells are separated by {separator}",
            mark switch
            {
                DecimalMark.Comma => "numbers have a decimal comma",
                DecimalMark.Both => "some numbers have a decimal comma and some a decimal point",
                _ => null,
            },
            encoding is null ? null : $"the text is in {encoding}",
        ];
        var words = string.Join(", ", parts.OfType<string>());
        var (first, others) = (char.ToUpperInvariant(words[0]), words[1..]);
        return new(
            at.File, at.Line, "", "FILE_FORM", Gravity.Noted, "", $"{first}{others}.",
            "Nothing, if that is so; otherwise save the table as CSV (UTF-8) with commas and decimal points.");
    }

    public static Notice IdTwice(SourceLine at, string id, SourceLine first) => Row(
        at, BakeColumns.Id.Name, "BAKE_ID_TWICE", id,
        $"This bake_id is already that of {first.File}, line {Number(first.Line)}; the first stays.",
        "Give each bake a bake_id of its own, or delete the copy.");

    public static Notice IdNeighboursOnly(SourceLine at, string id) => new(
        at.File, at.Line, BakeColumns.Id.Name, "BAKE_ID_NEIGHBOURS", Gravity.Noted, id,
        $"{Number(BakeIds.Remembered)} bakes have gone before; from here on a bake_id is compared with that of the row before only.",
        "Nothing, if the rows are sorted by bake_id; otherwise sort them, so that a bake_id that comes twice is found.");

    public static Notice RowEmpty(SourceLine at, string text) => Row(
        at, "", "ROW_EMPTY", text, "The row has no cell with anything in it.", "Delete the row.");

    public static Notice QuoteUnclosed(SourceLine at, string text) => Row(
        at, "", "QUOTE_UNCLOSED", text, "A quotation mark opens a cell and none closes it on this line.",
        "Close the quotation mark, or write it twice where it belongs to the text; keep a note on one line.");

    public static Notice QuoteStray(SourceLine at, string text) => new(
        at.File, at.Line, "", "QUOTE_STRAY", Gravity.Doubted, text, "A quotation mark stands inside a cell; it was kept as text.",
        "Put the whole cell in quotation marks and write the inner one twice.");

    public static Notice CellsTooMany(SourceLine at, string text, int cells, int columns) => new(
        at.File, at.Line, "", "CELLS_TOO_MANY", Gravity.Doubted, text,
        $"The row has {Number(cells)} cells and the header {Number(columns)}; the cells beyond the header were not read.",
        "Put a cell that holds a comma in quotation marks.");

    public static Notice NumberUnread(SourceLine at, string column, string text) => Cell(
        at, column, "NUMBER_UNREAD", text, "This is not a number, nor one with a unit behind it.",
        "Write a number such as 24.5, with a unit behind it if it is not the column's.");

    public static Notice NumberEither(SourceLine at, string column, string text, double comma, double point) => Cell(
        at, column, "NUMBER_EITHER", text,
        $"This is {Exact(Math.Max(comma, point))} or {Exact(Math.Min(comma, point))}, and the other numbers of the file don't say which.",
        $"Which is it? Write it without a sign between the thousands, such as {Exact(Math.Max(comma, point))}.");

    public static Notice UnitMissing(SourceLine at, string column, string text, string example) => Cell(
        at, column, "UNIT_MISSING", text, "Neither the cell nor the column's name says the unit.",
        $"Name the column {example}, or write the unit behind each number.");

    public static Notice UnitWrong(SourceLine at, string column, string text, string unit) => Cell(
        at, column, "UNIT_WRONG", text, $"'{unit}' is not a unit that this column can be measured in.",
        "Correct the unit.");

    public static Notice OutOfRange(SourceLine at, QuantityColumn column, string header, string text, double value)
    {
        var unit = UnitOf(column);
        return Cell(
            at, header, "OUT_OF_RANGE", text,
            $"{Number(Math.Round(value, 2))}{unit} is outside {Number(column.Low)} to {Number(column.High)}{unit}, the range this column can mean.",
            "Look for a slipped decimal point or another unit, and correct the cell.");
    }

    public static Notice TimeUnread(SourceLine at, string column, string text) => Cell(
        at, column, "TIME_UNREAD", text, "This is not a time of day.", "Write hours and minutes, such as 19:40 or 7:40 pm.");

    public static Notice SpanTaken(
        SourceLine at, QuantityColumn span, QuantityColumn start, QuantityColumn end, string text, double minutes) => new(
        at.File, at.Line, span.Name, "SPAN_TAKEN", Gravity.Noted, text,
        $"{span} is empty; the {Number(minutes)} min from {start} to {end} were taken.",
        $"Nothing, if both times belong together; otherwise write {span}.");

    public static Notice ClockChanged(
        SourceLine at, QuantityColumn span, QuantityColumn start, QuantityColumn end, string text) => new(
        at.File, at.Line, span.Name, "CLOCK_CHANGED", Gravity.Doubted, text,
        $"The clocks were changed that night, and {start} or {end} came twice or not at all; {span} stays empty.",
        $"Write {span}.");

    public static Notice ChoiceUnknown(SourceLine at, ChoiceColumn column, string header, string text) => Cell(
        at, header, "CHOICE_UNKNOWN", text, "The column does not know this word.",
        $"Write one of {string.Join(", ", column.Values)}.");

    public static Notice CupUnknown(SourceLine at, string column, string text) => Cell(
        at, column, "CUP_WEIGHT_UNKNOWN", text, "No weight of a cup or spoon of this is published.",
        "Weigh it, and write grams or ounces.");

    public static Notice FlourCupMethodMissing(SourceLine at, string column, string text, HouseholdWeight weight) => new(
        at.File, at.Line, column, "CUP_FILLING_UNKNOWN", Gravity.Doubted, text,
        $"How the cup was filled is not written; {Number(weight.GramsPerCup)} g a cup was taken, and cups filled in one way or another differ by about {Number(100 * (weight.Spread?.SharedRelativeSd ?? 0))} %.",
        "Write spooned, scooped or sifted in flour_measure, or weigh the flour.");

    public static Notice ColumnUnknown(SourceLine at, string column) => new(
        at.File, at.Line, column, "COLUMN_OWN", Gravity.Noted, column,
        "The toolkit has no meaning for this column; its cells are kept as text.",
        "Nothing, if the column is your own; otherwise correct its name.");

    public static Notice ColumnTwice(SourceLine at, string column, string first) => new(
        at.File, at.Line, column, "COLUMN_TWICE", Gravity.Unread, column,
        $"The column '{first}' already holds this; the cells of the second one are not read.",
        "Delete one of the two columns.");

    public static Notice CupWeight(SourceLine at, string column, HouseholdWeight weight) => new(
        at.File, at.Line, column, "CUP_WEIGHT_TAKEN", Gravity.Noted, column,
        $"Taken as {Number(weight.GramsPerCup)} g a cup ({weight.Source}).",
        "Nothing, or weigh it to be surer.");

    public static Notice FlourByCup(SourceLine at, string column) => new(
        at.File, at.Line, column, "FLOUR_BY_CUP", Gravity.Noted, column,
        "Flour by the cup is turned into grams by the way of filling in flour_measure.",
        "Nothing, or weigh the flour to be surer: cups filled alike still differ by about 4 %.");

    public static Notice YeastKindMissing(SourceLine at, string column, string text) => new(
        at.File, at.Line, column, "YEAST_KIND_MISSING", Gravity.Doubted, text,
        "The kind of yeast is not written; its percentage is not worked out.",
        "Write fresh, active_dry or instant in yeast_kind.");

    public static Notice FileUnread(string file, JournalFileException failure) => new(
        file, 1, "", "FILE_UNREAD", Gravity.Unread, "", failure.Reason, failure.Remedy);

    public static Notice FilePassedOver(string file) => new(
        file, 1, "", "FILE_PASSED_OVER", Gravity.Noted, "",
        $"This file was not read: the journal has more than {Number(JournalReader.KeptBakes)} bakes.",
        "Nothing, if it is not needed; otherwise part the journal into folders of fewer bakes, such as one for each year.");

    public static Notice CellNeeded(SourceLine at, string column, string text) => Row(
        at, column, "CELL_NEEDED", text, "The row can't do without this cell.", "Write it, or delete the row.");

    public static Notice BakeUnknown(SourceLine at, string id) => Row(
        at, BakeColumns.Id.Name, "BAKE_UNKNOWN", id, "No bake that was kept has this bake_id.",
        "Correct the bake_id, or see why the bake was set aside.");

    public static Notice RowTwice(SourceLine at, string text, IEnumerable<JournalColumn> key, long first) => Row(
        at, "", "ROW_TWICE", text,
        $"Line {Number(first)} already has this {string.Join(", ", key)}; the first stays.",
        "Delete the copy, or correct what tells the rows apart.");

    public static Notice ScaleEmpty(SourceLine at, RowValues row) => Row(
        at, AttributeColumns.High.Name, "SCALE_EMPTY", Exact(row.Of(AttributeColumns.High) ?? 0),
        $"The highest score is not above the lowest, {Exact(row.Of(AttributeColumns.Low) ?? 0)}.",
        "Write the lowest score in low and the highest in high.");

    public static Notice ScoreOffScale(SourceLine at, double value, ScoredAttribute scale) => Row(
        at, ScoreColumns.Value.Name, "SCORE_OFF_SCALE", Exact(value),
        $"The scale of '{scale.Name}' goes from {Exact(scale.Low)} to {Exact(scale.High)}.",
        "Correct the score, or the scale in attributes.csv.");

    public static Notice ReadingEmpty(SourceLine at) => Row(
        at, "", "READING_EMPTY", "", "The reading has neither a height, nor a volume, nor a temperature.",
        "Write what was read, or delete the row.");

    public static Notice AmountMissing(SourceLine at) => Row(
        at, "", "AMOUNT_MISSING", "", "The ingredient has neither a percentage nor an amount.",
        "Write one of them, or delete the row.");

    public static Notice LoavesTaken(SourceLine at, IEnumerable<JournalColumn> columns, int loaves) => new(
        at.File, at.Line, "", "LOAVES_TAKEN", Gravity.Noted, "",
        $"Empty here and taken from the loaves of this bake in loaves.csv, {Number(loaves)} of them: {string.Join(", ", columns)}.",
        "Nothing, if those are all its loaves.");

    public static Notice LoafCountDiffers(SourceLine at, double own, int loaves) => new(
        at.File, at.Line, BakeColumns.LoafCount.Name, "LOAF_COUNT_DIFFERS", Gravity.Doubted, Exact(own),
        $"The number of this bake's loaves in loaves.csv is {Number(loaves)}.",
        "Correct loaf_count, or write the other loaves in loaves.csv.");

    public static Notice ColumnReadAs(SourceLine at, string column, JournalColumn meant) => new(
        at.File, at.Line, column, "COLUMN_READ_AS", Gravity.Noted, column,
        $"Read as {meant.Name}.",
        "Nothing, if that is meant; otherwise give the column another name.");

    public static Notice ColumnTaken(SourceLine at, string column, JournalColumn meant) => new(
        at.File, at.Line, column, "COLUMN_TAKEN", Gravity.Noted, column,
        $"It could be {meant.Name}, but another column holds that; its cells are kept as text.",
        "Nothing, if the column is your own; otherwise keep the right one of the two.");

    public static Notice ColumnAmbiguous(SourceLine at, string column, IReadOnlyList<JournalColumn> meanings) => new(
        at.File, at.Line, column, "COLUMN_AMBIGUOUS", Gravity.Doubted, column,
        $"It could be {string.Join(" or ", meanings)}; its cells are kept as text.",
        "Give the column one of these names.");

    public static Notice FahrenheitLikely(
        SourceLine at, string column, string text, QuantityColumn range, double value, double asFahrenheit) => Cell(
        at, column, "FAHRENHEIT_LIKELY", text,
        $"{Number(value)} °C is outside {Number(range.Low)} to {Number(range.High)} °C, the range this column can mean; as °F it would be {Tenth(asFahrenheit)} °C.",
        "Write the unit behind the number, as in 76F, or end the column's name in _f.");

    public static Notice FahrenheitPossible(
        SourceLine at, string column, string text, UsualRange range, double value, double asFahrenheit) => Doubt(
        at, column, "FAHRENHEIT_POSSIBLE", text,
        $"{Number(value)} °C is outside {Number(range.Low)} to {Number(range.High)} °C, where it mostly lies; as °F it would be {Tenth(asFahrenheit)} °C.",
        "If the number is in °F, write the unit behind it, as in 60F; nothing to do if it is in °C.");

    public static Notice DecimalSlip(SourceLine at, QuantityColumn range, string column, string text, double value, double meant)
    {
        var unit = UnitOf(range);
        return Cell(
            at, column, "DECIMAL_SLIP", text,
            $"{Tenth(value)}{unit} is outside {Number(range.Low)} to {Number(range.High)}{unit}, the range this column can mean; with the decimal point moved it would be {Tenth(meant)}{unit}.",
            "Correct the decimal point, or the unit.");
    }

    public static Notice DecimalSlipPossible(
        SourceLine at, QuantityColumn column, double cell, double value, double median, double meant, string unit) => Doubt(
        at, column.Name, "DECIMAL_SLIP_POSSIBLE", Exact(cell),
        $"{Number(value)}{unit} is far from the journal's median, {Number(median)}{unit}; with the decimal point moved it would be {Number(meant)}{unit}.",
        "Correct the decimal point; nothing to do if it is so.");

    public static Notice ValueUnusual(SourceLine at, string column, string text, UsualRange range, double value)
    {
        var unit = UnitOf(range.Column);
        return Doubt(
            at, column, "VALUE_UNUSUAL", text,
            $"{Number(value)}{unit} is unusual: mostly it is {Number(range.Low)} to {Number(range.High)}{unit}.",
            "Look again; nothing to do if it is so.");
    }

    public static Notice RatioUnusual(SourceLine at, string column, string text, RatioRange range, double value) => Doubt(
        at, column, "RATIO_UNUSUAL", text,
        $"The {range.Name} comes to {Number(value)} {range.Unit}; mostly it is {Number(range.UsualLow)} to {Number(range.UsualHigh)}.",
        $"Look again at {range.Column} and {range.Against}; nothing to do if it is so.");

    public static Notice RatioImpossible(SourceLine at, string column, string text, RatioRange range, double value) => Cell(
        at, column, "RATIO_IMPOSSIBLE", text,
        $"The {range.Name} comes to {Number(value)} {range.Unit}; it can only be {Number(range.Low)} to {Number(range.High)}.",
        $"Correct {range.Column} or {range.Against}.");

    public static Notice RatioSlip(SourceLine at, string column, string text, RatioRange range, double value, double meant) => Cell(
        at, column, "RATIO_SLIP", text,
        $"The {range.Name} comes to {Number(value)} {range.Unit}; with a decimal point moved it would be {Number(meant)}.",
        $"Correct the decimal point of {range.Column} or {range.Against}.");

    public static Notice FlourOff(SourceLine at, string column, string text, double hydration, double salt) => Cell(
        at, column, "FLOUR_OFF", text,
        $"Water comes to {Number(hydration)} % of this flour and salt to {Number(salt)} %: neither can be.",
        "Correct flour_g, or the unit of the column.");

    public static Notice WaterHot(SourceLine at, string column, string text, double value) => Doubt(
        at, column, "WATER_HOT", text,
        $"Water of {Tenth(value)} °C is hotter than yeast stands; {Number(UsualRanges.HotWaterC)} °C is the most that is usual.",
        "Look again; nothing to do if it cooled before the yeast met it.");

    public static Notice DoughTempOff(SourceLine at, string column, string text, double value, double balance) => Doubt(
        at, column, "DOUGH_TEMP_OFF", text,
        $"The dough is at {Tenth(value)} °C, and the temperatures of flour and water make it about {Tenth(balance)} °C.",
        "Look which temperature of the row is mistyped.");

    public static Notice LoavesHeavier(SourceLine at, string column, string text, double loaves, double dough) => Cell(
        at, column, "LOAVES_HEAVIER", text,
        $"The loaves weigh {Number(loaves)} g and the dough {Number(dough)} g; no oven adds weight.",
        "Correct loaf_g, loaf_count or dough_g: the dough is that of all loaves, the loaf is one.");

    public static Notice LoafTooSmall(SourceLine at, string column, string text, double ratio) => Cell(
        at, column, "LOAF_TOO_SMALL", text,
        $"A gram of loaf has {Number(ratio)} mL; dough that never rose has {Number(UsualRanges.SpecificVolume.Low)} mL.",
        "Correct loaf_volume_ml or loaf_g.");

    public static Notice LooksSwapped(SourceLine at, string column, string text, double notReady, double ready) => Cell(
        at, column, "LOOKS_SWAPPED", text,
        $"Not ready at {Number(notReady)} min and ready at {Number(ready)} min can't both be; the second was taken as exact.",
        "Correct the two times: the look that found it not ready comes first.");

    public static Notice LooksFarApart(SourceLine at, string column, string text, double notReady, double ready, double gap) => new(
        at.File, at.Line, column, "LOOKS_FAR_APART", Gravity.Noted, text,
        $"Between the looks at {Number(notReady)} min and {Number(ready)} min lies {Number(100 * gap)} % of the time.",
        "Nothing for this bake; look more often towards the end of the next.");

    public static Notice RiseLong(SourceLine at, string column, string text, double value) => Doubt(
        at, column, "RISE_LONG", text,
        $"{Number(value)} min is long for a rise that is not in the cold: mostly it is up to {Number(UsualRanges.LongestWarmRiseMin)} min.",
        "Write cold_min if part of it was in the cold; otherwise look again.");

    public static Notice ReadyBeforeMixed(SourceLine at, string column, string text, double span) => Doubt(
        at, column, "READY_BEFORE_MIXED", text,
        $"Ready at an earlier time of day than mixed: that is {Number(span)} min by the clock, too long for this rise.",
        "Correct mixed_at or ready_at.");

    private static Notice Row(SourceLine at, string column, string code, string text, string message, string remedy) =>
        new(at.File, at.Line, column, code, Gravity.Refused, text, message, remedy);

    private static Notice Cell(SourceLine at, string column, string code, string text, string message, string remedy) =>
        new(at.File, at.Line, column, code, Gravity.Unread, text, message, remedy);

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string? EncodingName(FileForm form) => form.Encoding?.CodePage switch
    {
        null => null,
        1200 => "UTF-16 (low byte first)",
        1201 => "UTF-16 (high byte first)",
        _ => "Windows-1252",
    };

    private static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static Notice Doubt(SourceLine at, string column, string code, string text, string message, string remedy) =>
        new(at.File, at.Line, column, code, Gravity.Doubted, text, message, remedy);

    /// <summary>The unit of a column as it stands behind a number, with the blank before it.</summary>
    public static string UnitOf(QuantityColumn column) =>
        MeasureUnits.Canonical(column.Dimension) is { } unit ? " " + unit.Symbol : "";

    private static string Tenth(double value) => Number(Math.Round(value, 1));

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
