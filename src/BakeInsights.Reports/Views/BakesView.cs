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

    private const string ByCup = " ± is one standard deviation, from flour by the cup; it moves all percentages of a bake together.";

    /// <summary>A row for each bake, in the order given; ± where flour by the cup leaves a measure uncertain.</summary>
    public static View Of(IReadOnlyList<Bake> bakes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        var figures = new Figures(units);
        var byCup = bakes.Any(bake => Shown.Any(measure => measure.SdOf(bake) > 0)) ? ByCup : "";
        return new View(
        [
            new ViewTable(
                $"{JournalView.Count(bakes.Count, "bake")}. A dash is a cell that was not logged or not understood.{byCup}",
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
        .. Shown.Select(measure => Cell(measure, bake, figures)),
    ];

    private static string Cell(Measure measure, Bake bake, Figures figures)
    {
        var value = figures.Bare(measure.Dimension, measure.Of(bake));
        return measure.SdOf(bake) is { } sd and > 0 ? $"{value} ± {figures.BareDifference(measure.Dimension, sd)}" : value;
    }

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
