using System.Globalization;

namespace BakeInsights.Benchmarks;

/// <summary>A journal of any length to measure with: canonical columns, invented bakes, every cell as it should be.</summary>
internal static class LongJournal
{
    private static readonly DateOnly FirstDay = new(2016, 1, 1);

    /// <summary>Writes the journal, the same bytes for the same number of bakes.</summary>
    public static void Write(string path, int bakes)
    {
        var truth = new KitchenTruth();
        var random = new Random(1);
        using var file = new StreamWriter(path);
        file.Write(
            "bake_id,baked_on,baker,formula,flour_g,flour_measure,water_g,salt_g,yeast_g,yeast_kind,room_temp_c,flour_temp_c,"
            + "water_temp_c,dough_temp_c,mix_min,rise_min,proof_min,dough_g,loaf_count,loaf_g,loaf_volume_ml\n");
        for (var i = 0; i < bakes; i++)
        {
            double flour = 1_000 + (100 * random.Next(6));
            var hydration = 60 + random.Next(15);
            var salt = Math.Round(flour * (16 + random.Next(9)) / 1_000, 1);
            var yeast = Math.Round(flour * (6 + random.Next(10)) / 1_000, 1);
            var room = 20.5 + (1.8 * Normal(random));
            var water = 25.5 + (3.4 * Normal(random));
            var warmth = Math.Clamp(((2 * room) + water + 6) / 3, 16, 31) - 24;
            var minutes = truth.RiseMinutesAtCentre * Math.Exp(
                (truth.RiseDoughTemperature * warmth) + (truth.RiseHydration * (hydration - 65))
                + (truth.RiseLogYeast * Math.Log(100 * yeast / flour)) + (truth.RiseSalt * 100 * salt / flour)
                + (truth.RiseResidualSd * Normal(random)));
            var volume = truth.VolumeAtCentre + (truth.VolumeHydration * (hydration - 65))
                + (truth.VolumeHydrationSquared * (hydration - 65) * (hydration - 65))
                + (truth.VolumeDoughTemperature * warmth) + (truth.VolumeResidualSd * Normal(random));
            var waterG = Math.Round(flour * hydration / 100);
            var dough = Math.Round((flour + waterG + salt + yeast) * 0.985);
            var count = Math.Round(dough / 850);
            var loaf = Math.Round(dough / count * 0.882);
            file.Write(string.Create(
                CultureInfo.InvariantCulture,
                $"B{i:00000000},{FirstDay.AddDays(i % 3_650):yyyy-MM-dd},Mirre,lane loaf,{flour},weighed,{waterG},{salt},{yeast},instant,"
                + $"{room:0.0},{room - 0.5:0.0},{water:0.0},{warmth + 24:0.0},8,{minutes:0},42,{dough},{count},{loaf},{Math.Round(loaf * volume / 10) * 10}\n"));
        }
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
