using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>
/// Writes the readings of a few rising doughs of the demo month: each follows a curve that is stated, is read at
/// intervals to the millimetre or to ten millilitres, and one collapses.
/// </summary>
public static class DemoRises
{
    /// <summary>The standard deviation of a reading, as a share of the starting size.</summary>
    public const double ReadingSd = 0.02;

    // A dough that has collapsed sinks by this share of its rise at each reading.
    private const double Sinking = 0.2;

    /// <summary>How the doughs really rise.</summary>
    public static ImmutableArray<DemoRise> Truths { get; } =
    [
        new("ML-03", RiseStage.Rise, new GompertzRise(1.7, 0.022, 25), 60, IsHeight: true, EveryMin: 10, LastMin: 140, CollapsesAfterMin: null),
        new("ML-12", RiseStage.Rise, new GompertzRise(2.1, 0.03, 30), 55, IsHeight: true, EveryMin: 10, LastMin: 170, CollapsesAfterMin: 140),
        new("ML-20", RiseStage.Rise, new LogisticRise(1.4, 0.0095, 55), 1_500, IsHeight: false, EveryMin: 15, LastMin: 240, CollapsesAfterMin: null),
        new("ML-20", RiseStage.Proof, new LogisticRise(0.8, 0.016, 8), 750, IsHeight: false, EveryMin: 5, LastMin: 60, CollapsesAfterMin: null),
        new("ML-27", RiseStage.Rise, new GompertzRise(1.8, 0.022, 25), 62, IsHeight: true, EveryMin: 15, LastMin: 60, CollapsesAfterMin: null),
    ];

    /// <summary>The file <c>rise.csv</c> as text; the same seed gives the same bytes.</summary>
    public static string RiseCsv(int seed)
    {
        var chance = new Chance(seed);
        List<RiseReading> readings = [];
        foreach (var truth in Truths)
        {
            for (var minute = 0; minute <= truth.LastMin; minute += truth.EveryMin)
            {
                var size = truth.StartSize * (1 + RiseAt(truth, minute) + (ReadingSd * chance.Normal()));
                readings.Add(new RiseReading(
                    truth.BakeId,
                    truth.Stage,
                    minute,
                    truth.IsHeight ? Rounded(size, 1) : null,
                    truth.IsHeight ? null : Rounded(size, 10),
                    null,
                    new SourceLine("rise.csv", readings.Count + 2),
                    KitchenRun.NoColumns));
            }
        }

        return SideCsv.Of(readings);
    }

    private static double RiseAt(DemoRise truth, int minute)
    {
        var sunk = truth.CollapsesAfterMin is { } end && minute > end ? Sinking * ((minute - end) / truth.EveryMin) : 0;
        return truth.Curve.Rise(minute) * (1 - sunk);
    }

    private static double Rounded(double size, int step) => step * Math.Round(size / step);
}
