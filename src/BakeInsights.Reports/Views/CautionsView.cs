namespace BakeInsights.Reports;

/// <summary>The cautions that an occasion calls for.</summary>
public static class CautionsView
{
    /// <summary>Each with its source, and who decides in the end.</summary>
    public static View Of(Occasion occasion) => new(
    [
        new ViewList(
        [
            .. CautionCatalogue.For(occasion)
                .Select(caution => $"{caution.Topic}. {caution.Text} ({string.Join("; ", caution.Sources)})"),
        ]),
        new ViewParagraph(CautionCatalogue.Deference),
    ]);
}
