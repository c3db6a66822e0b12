using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>Bakes as a table of measures.</summary>
public static class BakesView
{
    private static readonly IReadOnlyList<Measure> Shown =
    [
        Measures.Hydration, Measures.Yeast, Measures.Salt, Measures.DoughTemperature, Measures.RiseTime,
        Measures.SpecificVolume, Measures.BakeLoss,
    ];

    /// <summary>A row for each bake, in the order given.</summary>
    public static View Of(IReadOnlyList<Bake> bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var figures = new Figures(units);
        return new View(
        [
            new ViewTable(
                $"{JournalView.Count(bakes.Count, "bake")}. A dash is a cell that was not logged or not understood.",
                [
                    new ViewColumn("Bake", false),
                    new ViewColumn("Day", false),
                    .. Shown.Select(measure => new ViewColumn(figures.TitleOf(measure), true)),
                ],
                [.. bakes.Select(bake => Row(bake, figures))]),
        ]);
    }

    /// <summary>For each measure how many bakes have it, and its range, middle and spread.</summary>
    public static View Summary(IReadOnlyList<Bake> bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var figures = new Figures(units);
        return new View(
        [
            new ViewTable(
                $"{JournalView.Count(bakes.Count, "bake")} in short: half of them lie between the quarter points.",
                [
                    new ViewColumn("Measure", false),
                    new ViewColumn("Bakes", true),
                    new ViewColumn("Least", true),
                    new ViewColumn("Lower quarter", true),
                    new ViewColumn("Middle", true),
                    new ViewColumn("Upper quarter", true),
                    new ViewColumn("Most", true),
                ],
                [
                    .. Measures.All
                        .Select(measure => MeasureSummary.Of(measure, bakes))
                        .OfType<MeasureSummary>()
                        .Where(summary => summary.Most > 0)
                        .Select(summary => SummaryRow(summary, figures)),
                ]),
        ]);
    }

    private static IReadOnlyList<string> Row(Bake bake, Figures figures) =>
    [
        bake.Id,
        bake.BakedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        .. Shown.Select(measure => figures.Bare(measure.Dimension, measure.Of(bake))),
    ];

    private static IReadOnlyList<string> SummaryRow(MeasureSummary summary, Figures figures)
    {
        string Shown(double value) => figures.Bare(summary.Measure.Dimension, value);
        return
        [
            figures.TitleOf(summary.Measure),
            summary.Count.ToString(CultureInfo.InvariantCulture),
            Shown(summary.Least),
            Shown(summary.LowerQuarter),
            Shown(summary.Middle),
            Shown(summary.UpperQuarter),
            Shown(summary.Most),
        ];
    }
}
