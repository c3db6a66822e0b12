using System.Globalization;

namespace BakeInsights;

/// <summary>
/// Writes the journal of one month in an invented community kitchen: the doughs follow a <see cref="KitchenTruth"/>,
/// and the hand that keeps the journal forgets cells, looks at the dough at intervals, and mistypes a row.
/// </summary>
public static class DemoMonth
{
    private const int BakesInMonth = 46;
    private const int LookMinutes = 10;
    private const double ShareLookedAtIntervals = 0.35;
    private const double ShareForgotten = 0.04;

    private static readonly DateOnly FirstDay = new(2026, 10, 1);
    private static readonly string[] Bakers = ["Anselma", "Dov", "Mirre", "Teodor"];

    /// <summary>The file <c>bakes.csv</c> as text; the same seed and truth give the same bytes.</summary>
    public static string BakesCsv(int seed, KitchenTruth truth)
    {
        ArgumentNullException.ThrowIfNull(truth);
        var chance = new Chance(seed);
        var bakes = Enumerable.Range(0, BakesInMonth).Select(index => Bake(index, chance, truth)).ToList();
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CanonicalCsv.Write(text, bakes);
        return MistypeOneDay(text.ToString());
    }

    private static Bake Bake(int index, Chance chance, KitchenTruth truth)
    {
        var day = FirstDay.AddDays(index * 31 / BakesInMonth);
        var draft = new BakeDraft($"ML-{index + 1:00}", day);
        draft.Set(BakeColumns.Baker, chance.Pick(Bakers))
            .Set(BakeColumns.Formula, "lane loaf")
            .Set(BakeColumns.FlourMeasure, "weighed")
            .Set(BakeColumns.YeastKind, "instant");
        var flour = 1_000 + (100 * chance.Pick(0, 2, 5));
        var water = Math.Round(flour * chance.Pick(60, 62, 64, 66, 66, 68, 70, 72, 74) / 100.0);
        var salt = Math.Round(flour * chance.Pick(1.6, 1.8, 2.0, 2.0, 2.2, 2.4) / 100);
        var yeast = Math.Round(flour * chance.Pick(0.6, 0.8, 1.0, 1.0, 1.2, 1.5) / 100, 1);
        draft.Set(BakeColumns.Flour, flour)
            .Set(BakeColumns.Water, water)
            .Set(BakeColumns.Salt, salt)
            .Set(BakeColumns.Yeast, yeast);

        var doughTemp = Temperatures(draft, chance);
        var hydration = 100 * water / flour - 65;
        var warmth = doughTemp - 24;
        Rise(draft, chance, RiseMinutes(truth, chance, warmth, hydration, 100 * yeast / flour, 100 * salt / flour));
        var doughG = flour + water + salt + yeast;
        Loaf(draft, chance, doughG, SpecificVolume(truth, chance, warmth, hydration));
        return draft.Finish(new SourceLine("bakes.csv", index + 2));
    }

    // The dough ends up near the trade's rule of three temperatures with a friction of about 6 °C, scattered as
    // hands and probes scatter it.
    private static double Temperatures(BakeDraft draft, Chance chance)
    {
        var room = Math.Round(20.5 + (1.8 * chance.Normal()), 1);
        var flour = Math.Round(room - 0.5 + (0.4 * chance.Normal()), 1);
        var water = Math.Round(25.5 + (3.4 * chance.Normal()), 1);
        var dough = Math.Round(((room + flour + water + 6) / 3) + (0.7 * chance.Normal()), 1);
        draft.Set(BakeColumns.RoomTemp, room).Set(BakeColumns.FlourTemp, flour).Set(BakeColumns.WaterTemp, water);
        if (!chance.Happens(ShareForgotten))
        {
            draft.Set(BakeColumns.DoughTemp, dough);
        }

        return dough;
    }

    private static double RiseMinutes(
        KitchenTruth truth, Chance chance, double warmth, double hydration, double yeastPct, double saltPct) =>
        truth.RiseMinutesAtCentre * Math.Exp(
            (truth.RiseDoughTemperature * warmth)
            + (truth.RiseHydration * hydration)
            + (truth.RiseLogYeast * Math.Log(yeastPct))
            + (truth.RiseSalt * saltPct)
            + (truth.RiseResidualSd * chance.Normal()));

    private static void Rise(BakeDraft draft, Chance chance, double minutes)
    {
        if (chance.Happens(ShareForgotten))
        {
            return;
        }

        var ready = Math.Round(minutes);
        if (chance.Happens(ShareLookedAtIntervals))
        {
            ready = Math.Ceiling(minutes / LookMinutes) * LookMinutes;
            draft.Set(BakeColumns.RiseNotReady, ready - LookMinutes);
        }

        draft.Set(BakeColumns.Mix, chance.Pick(7, 8, 8, 9))
            .Set(BakeColumns.Rise, ready)
            .Set(BakeColumns.RiseOutcome, "ready")
            .Set(BakeColumns.Proof, Math.Round(42 + (5 * chance.Normal())));
    }

    private static double SpecificVolume(KitchenTruth truth, Chance chance, double warmth, double hydration) =>
        truth.VolumeAtCentre
        + (truth.VolumeHydration * hydration)
        + (truth.VolumeHydrationSquared * hydration * hydration)
        + (truth.VolumeDoughTemperature * warmth)
        + (truth.VolumeDoughTemperatureSquared * warmth * warmth)
        + (truth.VolumeHydrationXDoughTemperature * hydration * warmth)
        + (truth.VolumeResidualSd * chance.Normal());

    private static void Loaf(BakeDraft draft, Chance chance, double doughG, double specificVolume)
    {
        var dough = Math.Round(doughG * (0.985 + (0.003 * chance.Normal())));
        var count = (int)Math.Round(dough / 850);
        var loaf = Math.Round(dough / count * (0.882 + (0.008 * chance.Normal())));
        draft.Set(BakeColumns.OvenTemp, chance.Pick(225, 230, 230, 235))
            .Set(BakeColumns.Baking, chance.Pick(36, 38, 40))
            .Set(BakeColumns.Steam, "yes")
            .Set(BakeColumns.Dough, dough)
            .Set(BakeColumns.LoafCount, count)
            .Set(BakeColumns.Loaf, loaf)
            .Set(BakeColumns.CrumbScore, Math.Clamp(Math.Round((specificVolume * 2.2) - 5.5 + (0.7 * chance.Normal())), 1, 5));
        if (!chance.Happens(ShareForgotten))
        {
            draft.Set(BakeColumns.LoafVolume, Math.Round(loaf * specificVolume / 10) * 10);
        }
    }

    private static string MistypeOneDay(string csv) => csv.Replace("ML-31,2026-10-", "ML-31,2026-13-", StringComparison.Ordinal);
}
