namespace BakeInsights.Tests;

/// <summary>
/// A kitchen whose doughs follow a <see cref="KitchenTruth"/> to the last digit: nothing rounded, nothing forgotten. Apart
/// from <see cref="DemoMonth"/> on purpose, so that the two don't share a slip.
/// </summary>
internal static class ExactKitchen
{
    private const double Flour = 1_000;
    private const double Loaf = 800;

    /// <summary>
    /// A month of bakes; with looks, a rise is known to lie between two of them. With a spread of the flour, the journal
    /// holds the nominal weight of a scooped cup and the true one scatters about it: Berkson's kind of error.
    /// </summary>
    public static IReadOnlyList<Bake> Month(
        int seed, KitchenTruth truth, int bakes = 46, double? lookEveryMin = null, double flourRelativeSd = 0)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, bakes).Select(index => Bake(index, random, truth, lookEveryMin, flourRelativeSd))];
    }

    private static Bake Bake(int index, Random random, KitchenTruth truth, double? lookEveryMin, double flourRelativeSd)
    {
        var warmth = 1.8 * Normal(random);
        var hydration = -7 + (24 * random.NextDouble());
        var yeast = 0.6 + random.NextDouble();
        var salt = 1.6 + (0.8 * random.NextDouble());
        var (nominalHydration, nominalYeast, nominalSalt) = (hydration, yeast, salt);
        if (flourRelativeSd > 0)
        {
            var more = 1 + (flourRelativeSd * Normal(random));
            (hydration, yeast, salt) = (((65 + hydration) / more) - 65, yeast / more, salt / more);
        }

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
            .Set(BakeColumns.FlourMeasure, flourRelativeSd > 0 ? "scooped" : "weighed")
            .Set(BakeColumns.Water, Flour * (65 + nominalHydration) / 100)
            .Set(BakeColumns.Yeast, Flour * nominalYeast / 100)
            .Set(BakeColumns.YeastKind, "instant")
            .Set(BakeColumns.Salt, Flour * nominalSalt / 100)
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
