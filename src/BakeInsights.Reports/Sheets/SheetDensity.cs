namespace BakeInsights.Reports;

/// <summary>How tightly a sheet is set, so that one bake is one page however many columns its journal has.</summary>
internal static class SheetDensity
{
    // Room for lines of the usual size on the shorter paper, letter, measured in Chromium; those below are 12 and 25 % smaller.
    private const double LinesUsual = 76;
    private const double LinesTight = 88;

    // Signs in a line across the whole sheet, in a column of lists and in a half of the upper part.
    private const double Wide = 150;
    private const double Half = 62;

    /// <summary>The style's class for a sheet.</summary>
    public static string Of(double lines) => lines <= LinesUsual ? "usual" : lines <= LinesTight ? "tight" : "tightest";

    /// <summary>About how many lines of the usual size a sheet takes.</summary>
    public static double LinesOf(Sheet sheet, UnitSystem units)
    {
        const double fieldLines = 2.3;
        const double rowLines = 1.25;
        var formula = new SheetFormulaWords(sheet, units);
        var day = new SheetDayWords(sheet, units);
        var upper = Math.Max(
            (rowLines * (formula.Table().Rows.Count + 2)) + Lines([formula.Amounts(), .. formula.Cups()], Half),
            2 + Lines(new SheetWaterWords(sheet, units).All(), Half));
        var middle = (rowLines * (day.Steps().Rows.Count + 8)) + Lines([day.Fit(), .. day.Remedies(), day.Spread(), day.Ready(), .. day.EarlyAndLate(), .. day.Remarks()], Wide);
        var blanks = (fieldLines * Math.Ceiling(sheet.Blanks.Count / 3.0)) + 3;
        var mind = 0.8 * Lines(sheet.Cautions.Select(caution => caution.Topic + caution.Text), Wide / 2) / 2;
        return 4 + upper + middle + blanks + mind + 2;
    }

    private static double Lines(IEnumerable<string> texts, double signs) => texts.Sum(text => Math.Ceiling(text.Length / signs));
}
