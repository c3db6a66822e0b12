namespace BakeInsights.Reports;

/// <summary>A sheet to read on a terminal or in a notebook; to print it, there is <see cref="SheetPage"/>.</summary>
public static class SheetView
{
    /// <summary>All that the sheet says.</summary>
    public static View Of(Sheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var formula = new SheetFormulaWords(sheet, units);
        var day = new SheetDayWords(sheet, units);
        List<ViewBlock> blocks =
        [
            new ViewHeading(Title(sheet)),
            new ViewParagraph(formula.Subtitle()),
            formula.Table(),
            new ViewParagraph(formula.Amounts()),
            .. formula.Cups().Select(words => new ViewParagraph(words)),
            new ViewHeading("Water"),
            new ViewList(new SheetWaterWords(sheet, units).All()),
            new ViewHeading("Day"),
            new ViewParagraph(day.Fit()),
        ];
        AddList(blocks, day.Remedies());
        blocks.Add(day.Steps());
        blocks.Add(new ViewParagraph(day.Spread()));
        blocks.Add(new ViewHeading("Looks"));
        blocks.Add(new ViewParagraph(day.Ready()));
        blocks.Add(new ViewTable(
            "If mixing ends when expected.",
            [new ViewColumn("Look at", true), new ViewColumn("Minutes after mixing", true)],
            [.. day.Looks().Select(look => new[] { look.Clock, look.Minutes })]));
        blocks.Add(new ViewList([.. day.EarlyAndLate(), .. day.Remarks()]));
        if (sheet.Blanks.Count > 0)
        {
            blocks.Add(new ViewHeading("To write down"));
            blocks.Add(Blanks(sheet));
        }

        blocks.Add(new ViewHeading("Mind"));
        blocks.Add(new ViewList([.. sheet.Cautions.Select(caution => $"{caution.Topic}. {caution.Text}")]));
        blocks.Add(new ViewParagraph(CautionCatalogue.Deference));
        return new View(blocks);
    }

    /// <summary>What stands at the head of a sheet.</summary>
    internal static string Title(Sheet sheet) => sheet.Name.Length > 0 ? sheet.Name : "Bake sheet";

    private static ViewTable Blanks(Sheet sheet) => new(
        "In the order of the journal's columns.",
        [new ViewColumn("Field", false), new ViewColumn("What", false), new ViewColumn("Unit or words", false), new ViewColumn("Given", false)],
        [.. sheet.Blanks.Select(blank => new[]
        {
            blank.Name,
            blank.Label.Length > 0 ? blank.Label : "a column of the journal's own",
            blank.Words.Count > 0 ? string.Join(", ", blank.Words) : blank.Unit,
            blank.Given,
        })]);

    private static void AddList(List<ViewBlock> blocks, IReadOnlyList<string> items)
    {
        if (items.Count > 0)
        {
            blocks.Add(new ViewList(items));
        }
    }
}
