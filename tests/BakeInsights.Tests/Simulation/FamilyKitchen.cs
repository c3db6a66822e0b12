using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights.Tests;

/// <summary>
/// Virtual kitchens in which every question of a month can be asked and its true answer is known: three benches, four
/// bakers, three judges, two columns of the baker's own that do nothing, and a month before.
/// </summary>
/// <remarks>
/// Room and tap stay as they are through the year: else the months would differ, and rightly be found to. Judges sit where
/// the middle of their scales is, for the same reason.
/// </remarks>
internal sealed class FamilyKitchen
{
    /// <summary>The noise of the trade's effects: a share of rise time and of specific volume.</summary>
    public const double Noise = 0.10;

    // So that the straight line through the scores is known far better than a month knows it.
    private const int BakesForTruth = 20_000;

    private static readonly string[] Kneading = ["by hand", "folded", "in the mixer"];

    private static readonly (string Name, Measure Measure, double Step)[] Causes =
    [
        ("hydration", Measures.Hydration, 3), ("dough_temperature", Measures.DoughTemperature, 2), ("proof_time", Measures.ProofTime, 5),
    ];

    private static readonly FamilyKitchen TradeScored = Of(VirtualKitchen.TradeEffects(Noise), true, panel => panel with { StretchSd = 0 });

    private static readonly FamilyKitchen TradeUnscored = new(TradeScored._kitchen, false);

    private readonly VirtualKitchen _kitchen;
    private readonly bool _isScored;
    private readonly Lazy<IReadOnlyDictionary<string, double>> _scores;

    private FamilyKitchen(VirtualKitchen kitchen, bool isScored)
    {
        _kitchen = kitchen;
        _isScored = isScored;
        _scores = new(LinesThroughScores);
    }

    /// <summary>No cause moves anything. What judges see differs from bake to bake, by chance alone.</summary>
    public static FamilyKitchen NothingMatters(bool isScored) => Of(
        VirtualKitchen.NothingMatters, isScored, panel => panel with { CrumbPerVolume = 8, FlavourPerLogRise = 8 });

    /// <summary>The trade's effects through a tenth of noise.</summary>
    public static FamilyKitchen TradeEffects(bool isScored) => isScored ? TradeScored : TradeUnscored;

    /// <summary>The questions of the second of two months, asked and not yet judged.</summary>
    public MonthAnswers Month(Random random, int bakes)
    {
        var journal = _kitchen.Months(random.Next(), 2, bakes);
        return MonthAnswers.Of(
            journal with
            {
                Bakes = [.. journal.Bakes.Select(bake => WithColumns(bake, random, _isScored))],
                Scores = _isScored ? journal.Scores : [],
            },
            "");
    }

    /// <summary>What the interval of an answer should hold, for the dough that the answer speaks of, and that of its bend.</summary>
    public (double Effect, double Bend) TruthOf(Finding answer)
    {
        var truth = _kitchen.Truth;
        var typical = DoughSettings.MedianOf(answer.Bakes);
        double At(Measure measure) => typical[measure]!.Value;
        double Minutes(double ln) => truth.RiseMinutesAtCentre * Math.Exp(Rise(At(Measures.Salt))) * double.ExpM1(ln);

        // The model of the proof has no salt: its doughs have the mean of what is used.
        double Proof(double ln) => _kitchen.Oven.ProofMinutes
            * Math.Exp(_kitchen.Oven.ProofPower * (Rise(KitchenTruth.UsualSaltPct) - (truth.RiseSalt * KitchenTruth.UsualSaltPct)))
            * double.ExpM1(_kitchen.Oven.ProofPower * ln);
        double Rise(double salt) => (truth.RiseDoughTemperature * (At(Measures.DoughTemperature) - 24))
            + (truth.RiseHydration * (At(Measures.Hydration) - 65)) + (truth.RiseLogYeast * Math.Log(At(Measures.Yeast))) + (truth.RiseSalt * salt);

        return answer.Name switch
        {
            "rise_time.dough_temperature" => (Minutes(2 * truth.RiseDoughTemperature), 0),
            "rise_time.yeast" => (Minutes(Math.Log(1.25) * truth.RiseLogYeast), 0),
            "rise_time.hydration" => (Minutes(3 * truth.RiseHydration), 0),
            "rise_time.salt" => (Minutes(0.5 * truth.RiseSalt), 0),
            "proof_time.dough_temperature" => (Proof(2 * truth.RiseDoughTemperature), 0),
            "proof_time.yeast" => (Proof(Math.Log(1.25) * truth.RiseLogYeast), 0),
            "proof_time.hydration" => (Proof(3 * truth.RiseHydration), 0),
            "loaf_volume.hydration" => (
                (3 * truth.VolumeHydration) + (truth.VolumeHydrationSquared * ((6 * (At(Measures.Hydration) - 65)) + 9)), 9 * truth.VolumeHydrationSquared),
            "loaf_volume.dough_temperature" => (
                (2 * truth.VolumeDoughTemperature) + (truth.VolumeDoughTemperatureSquared * ((4 * (At(Measures.DoughTemperature) - 24)) + 4)),
                4 * truth.VolumeDoughTemperatureSquared),
            var name when name.Contains("_score.", StringComparison.Ordinal) => (_scores.Value[name], 0),

            // Months, groups, own columns, drifts, curves that there are not, the proof on volume.
            _ => (0, 0),
        };
    }

    private static FamilyKitchen Of(VirtualKitchen kitchen, bool isScored, Func<TastingPanel, TastingPanel> seen) => new(
        kitchen with
        {
            Climate = kitchen.Climate with { RoomSwingC = 0, TapSwingC = 0 },
            Hands = kitchen.Hands with { Benches = ["door bench", "middle bench", "window bench"] },
            Panel = seen(kitchen.Panel) with { Judges = ["Corvin", "Hesper", "Odalys"], ShiftSd = 0 },
        },
        isScored);

    private static Bake WithColumns(Bake bake, Random random, bool isScored)
    {
        var row = bake.Row.Copy();
        row.Keep("kneading", Kneading[random.Next(Kneading.Length)]);
        row.Keep("shelf", random.Next(1, 6).ToString(CultureInfo.InvariantCulture));
        if (!isScored)
        {
            row.Quantities[BakeColumns.CrumbScore.Index] = double.NaN;
        }

        return new Bake(row);
    }

    // Scores bend with hydration where the volume does. What a line's interval should hold is the line through all bakes
    // that the kitchen could bake.
    private IReadOnlyDictionary<string, double> LinesThroughScores()
    {
        var journal = _kitchen.Month(1, BakesForTruth);
        var byId = journal.Bakes.ToDictionary(bake => bake.Id);
        Dictionary<string, double> truths = [];
        foreach (var attribute in journal.Scores.GroupBy(score => score.Attribute))
        {
            var rows = attribute.GroupBy(score => score.BakeId, score => score.Value)
                .Select(same => (Bake: byId[same.Key], Rating: same.Average()))
                .Where(row => Causes.All(cause => cause.Measure.Of(row.Bake) is not null)).ToList();
            var fit = LeastSquares.Fit(
                new Design(
                [
                    DesignColumn.Constant(rows.Count),
                    .. Causes.Select(cause => new DesignColumn(cause.Name, [.. rows.Select(row => cause.Measure.Of(row.Bake)!.Value)])),
                ]),
                [.. rows.Select(row => row.Rating)]).Value;
            foreach (var (cause, term) in Causes.Zip(fit.Terms.Skip(1)))
            {
                truths[$"{attribute.Key}_score.{cause.Name}"] = cause.Step * term.Estimate;
            }

            truths[$"{attribute.Key}_score.middle"] = rows.Average(row => row.Rating) - 5;
        }

        return truths;
    }
}
