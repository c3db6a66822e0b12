namespace BakeInsights.Tests;

/// <summary>
/// A kitchen whose doughs follow a <see cref="KitchenTruth"/> to the last digit: nothing rounded, nothing forgotten. Apart
/// from <see cref="DemoMonth"/> on purpose, so that the two don't share a slip.
/// </summary>
internal static class ExactKitchen
{
    private const double Flour = 1_000;
    private const double Loaf = 800;

    /// <summary>A month of bakes; with looks, a rise is known to lie between two of them.</summary>
    public static IReadOnlyList<Bake> Month(int seed, KitchenTruth truth, int bakes = 46, double? lookEveryMin = null)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, bakes).Select(index => Bake(index, random, truth, lookEveryMin))];
    }

    private static Bake Bake(int index, Random random, KitchenTruth truth, double? lookEveryMin)
    {
        var warmth = 1.8 * Normal(random);
        var hydration = -7 + (24 * random.NextDouble());
        var yeast = 0.6 + random.NextDouble();
        var salt = 1.6 + (0.8 * random.NextDouble());
        var minutes = truth.RiseMinutesAtCentre * Math.Pow(yeast, truth.RiseLogYeast) * Math.Exp(
            (truth.RiseDoughTemperature * warmth) + (truth.RiseHydration * hydration) + (truth.RiseSalt * salt)
            + (truth.RiseResidualSd * Normal(random)));
        var volume = truth.VolumeAtCentre
            + (hydration * (truth.VolumeHydration + (truth.VolumeHydrationSquared * hydration)))
            + (warmth * (truth.VolumeDoughTemperature + (truth.VolumeDoughTemperatureSquared * warmth)))
            + (truth.VolumeHydrationXDoughTemperature * hydration * warmth)
            + (truth.VolumeResidualSd * Normal(random));
        var draft = new BakeDraft($"K{index + 1}", new DateOnly(2026, 10, 1))
            .Set(BakeColumns.Flour, Flour)
            .Set(BakeColumns.FlourMeasure, "weighed")
            .Set(BakeColumns.Water, Flour * (65 + hydration) / 100)
            .Set(BakeColumns.Yeast, Flour * yeast / 100)
            .Set(BakeColumns.YeastKind, "instant")
            .Set(BakeColumns.Salt, Flour * salt / 100)
            .Set(BakeColumns.DoughTemp, 24 + warmth)
            .Set(BakeColumns.Loaf, Loaf)
            .Set(BakeColumns.LoafVolume, Loaf * volume);
        if (lookEveryMin is { } gap)
        {
            var look = Math.Ceiling(minutes / gap) * gap;
            draft.Set(BakeColumns.RiseNotReady, look - gap);
            minutes = look;
        }

        return draft.Set(BakeColumns.Rise, minutes).Finish(new SourceLine("bakes.csv", index + 2));
    }

    // Marsaglia and Bray (1964), SIAM Review 6, 260-264: another way than the demo month's.
    private static double Normal(Random random)
    {
        while (true)
        {
            var u = (2 * random.NextDouble()) - 1;
            var v = (2 * random.NextDouble()) - 1;
            var s = (u * u) + (v * v);
            if (s is > 0 and < 1)
            {
                return u * Math.Sqrt(-2 * Math.Log(s) / s);
            }
        }
    }
}
