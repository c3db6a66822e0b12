namespace BakeInsights.Reports;

/// <summary>
/// How large the letters of a sheet are, so that one bake is one page however many columns its journal has. A page has
/// no script that could measure it, so its lines are counted here, for a font as wide as the widest of the style's list.
/// </summary>
internal static class SheetScale
{
    // What is comfortable at arm's length on a bench, and what can still be read (judgement).
    private const double LargestPt = 8;
    private const double SmallestPt = 4.5;
    private const double StepPt = 0.1;

    // Kept free, as a share of the height: lines break a little otherwise than counted.
    private const double Spare = 0.02;

    private const double MmInPt = 25.4 / 72;

    // Of the style sheet: the height of a line, of a row's padding and of small print, in parts of the letters' size.
    private const double LineEm = 1.25;
    private const double RowEm = 1.6;
    private const double SmallEm = 0.82;
    private const double LabelEm = 0.72;

    // The mean width of a letter in DejaVu Sans, measured on our own sentences; bold letters are wider.
    private const double LetterEm = 0.51;
    private const double BoldLetterEm = 0.58;

    // What a line to write on may get on top, in mm, and how much of the room left over goes there.
    private const double MostExtraMm = 3;
    private const double ExtraShare = 0.7;

    /// <summary>The size of the letters, in points, and what is left over for each blank to write in, in mm.</summary>
    public static (double Points, double ExtraMm) Of(Sheet sheet, Paper paper, UnitSystem units)
    {
        var (width, height) = paper == Paper.A4 ? (210.0, 297.0) : (215.9, 279.4);
        var (roomW, roomH) = (width - (2 * SheetHtml.MarginMm), (height - (2 * SheetHtml.MarginMm)) * (1 - Spare));
        var points = LargestPt;
        while (points > SmallestPt && HeightMm(sheet, units, points * MmInPt, roomW) > roomH)
        {
            points -= StepPt;
        }

        var rows = Math.Ceiling((sheet.Blanks.Count + 1) / 3.0) + 1;
        var left = roomH - HeightMm(sheet, units, points * MmInPt, roomW);
        return (points, Math.Clamp(ExtraShare * left / rows, 0, MostExtraMm));
    }

    private static double HeightMm(Sheet sheet, UnitSystem units, double em, double width)
    {
        // Margins of the style sheet that are in mm.
        const double gaps = 10;
        var half = (width - 6) / 2;
        return gaps + Upper(sheet, units, em, half) + Looks(sheet, units, em, width) + Blanks(sheet, em, (width - 10) / 3) + Mind(sheet, em, half)
            + (em * (2.4 + LineEm));
    }

    private static double Upper(Sheet sheet, UnitSystem units, double em, double half)
    {
        var formula = new SheetFormulaWords(sheet, units);
        var day = new SheetDayWords(sheet, units);
        var table = formula.Table();
        var narrow = sheet.Cups is null ? half / 3 : half / 3.8;
        var rows = table.Rows.Sum(row => (LineEm * Math.Max(Lines(row[0], em, narrow), sheet.Cups is null ? 1 : Lines(row[^2], em, narrow))) + 0.35);
        var left = 2 * RowEm + 2 + rows + Text([formula.Amounts(), .. formula.Cups(), .. new SheetWaterWords(sheet, units).All()], em, half - 4);
        var right = (RowEm * 2) + (LineEm + (RowEm * (day.Steps().Rows.Count + 1)))
            + Text([day.Spread(), .. day.Remedies()], em, half - 4) + (LineEm * Lines(day.Fit(), em, half - 4, BoldLetterEm)) + 1;
        return em * Math.Max(left, right);
    }

    private static double Looks(Sheet sheet, UnitSystem units, double em, double width)
    {
        var day = new SheetDayWords(sheet, units);
        return em * ((RowEm * 3) + 1.6 + Text([day.Ready(), .. day.EarlyAndLate(), .. day.Remarks()], em, width - 4));
    }

    // Columns fill up one after the other, so the tallest is a field longer than a third.
    private static double Blanks(Sheet sheet, double em, double third)
    {
        double Field(SheetBlank blank) => 1.3 + 0.9 + 0.1
            + (blank.Words.Count + blank.Label.Length == 0 ? 0 : LabelEm * 1.15 * Lines(SheetHtml.LabelOf(blank), em * LabelEm, third));
        return sheet.Blanks.Count == 0 ? 0 : em * ((sheet.Blanks.Sum(Field) / 3) + sheet.Blanks.Max(Field) + RowEm + LineEm);
    }

    private static double Mind(Sheet sheet, double em, double half)
    {
        var lines = SheetHtml.Mind(sheet).Sum(text => Lines(text, em * SmallEm, half - 6));
        return em * (RowEm + (SmallEm * 1.2 * ((lines / 2) + 2)));
    }

    private static double Text(IEnumerable<string> texts, double em, double width) =>
        texts.Sum(text => (LineEm * Lines(text, em, width)) + 0.3);

    private static double Lines(string text, double em, double width, double letter = LetterEm) =>
        Math.Max(1, Math.Ceiling(text.Length * letter * em / (0.97 * width)));
}
