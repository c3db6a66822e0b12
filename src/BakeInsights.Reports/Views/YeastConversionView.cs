namespace BakeInsights.Reports;

/// <summary>One kind of yeast as the others, by every source: they disagree.</summary>
public static class YeastConversionView
{
    /// <summary>A row for each source; a dash where it does not say.</summary>
    public static View Of(double grams, YeastKind kind)
    {
        var kinds = Enum.GetValues<YeastKind>();
        return new View(
        [
            new ViewTable(
                $"{Figures.Rounded(grams, 1)} g of {Ingredient.Yeast(grams, kind).Name}, by source. The first is used here.",
                [
                    .. kinds.Select(other => new ViewColumn(Ingredient.Yeast(grams, other).Name + " (g)", true)),
                    new ViewColumn("Source", false),
                ],
                [
                    .. YeastConversion.All.Select(source => (IReadOnlyList<string>)
                    [
                        .. kinds.Select(other => source.Convert(grams, kind, other) is { } mass ? Figures.Rounded(mass, 1) : "–"),
                        source.Source,
                    ]),
                ]),
        ]);
    }
}
