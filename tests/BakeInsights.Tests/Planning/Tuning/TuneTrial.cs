namespace BakeInsights.Tests;

/// <summary>One journal of a kitchen whose truth is known, tuned for wishes drawn at random, and the bakes that follow.</summary>
/// <param name="Printed">The chance printed for the formula advised.</param>
/// <param name="Met">Whether the next bake by that formula met all goals.</param>
/// <param name="BestSeenMet">Whether the next bake, with the same luck, met them by the settings of the best bake in the journal.</param>
/// <param name="HouseMet">Whether it met them by the house formula.</param>
/// <param name="IsChange">Whether a change was advised.</param>
internal sealed record TuneTrial(double Printed, bool Met, bool BestSeenMet, bool HouseMet, bool IsChange)
{
    /// <summary>A kitchen of the trade's effects, its truth drawn from the trade's bands and its loaf from wide ones.</summary>
    public static VirtualKitchen Drawn(Random random)
    {
        double In(double low, double high) => low + ((high - low) * random.NextDouble());
        var kitchen = VirtualKitchen.TradeEffects(In(0.05, 0.15));
        return kitchen with
        {
            Truth = kitchen.Truth with
            {
                RiseDoughTemperature = In(-0.13, -0.05),
                RiseHydration = In(-0.02, 0),
                RiseLogYeast = In(-1, -0.6),
                RiseSalt = In(0, 0.15),
                VolumeHydration = In(-0.04, 0.1),
                VolumeHydrationSquared = In(-0.01, 0),
                VolumeDoughTemperature = In(-0.06, 0.1),
                VolumeDoughTemperatureSquared = In(-0.02, 0),
                VolumeHydrationXDoughTemperature = In(-0.01, 0.01),
            },
        };
    }

    /// <summary>Keeps a journal, wishes, tunes, and bakes once more; null where the wish can't be met or modelled.</summary>
    public static TuneTrial? Run(Random random, Func<Random, VirtualKitchen> draw)
    {
        var kitchen = draw(random);
        int[] sizes = [15, 25, 40, 60];
        var (seed, count) = (random.Next(), sizes[random.Next(sizes.Length)]);
        var bakes = kitchen.Bakes(seed, count);
        var wish = Wish(random, bakes);
        if (!Tuning.Ask(bakes, wish, seed).TryGet(out var answer, out _) || answer.OutOfReach.Count > 0)
        {
            return null;
        }

        bool Meets(DoughSettings settings) => wish.Goals.All(goal => IsMet(goal, Next(kitchen, seed, count, settings)));
        return new TuneTrial(
            answer.Advised.Chance.Value,
            Meets(answer.Advised.Settings),
            Meets(DoughSettings.MedianOf([BestSeen(bakes, wish)])),
            Meets(answer.House.Settings),
            answer.IsChange);
    }

    private static TuneWish Wish(Random random, IReadOnlyList<Bake> bakes)
    {
        double Share(Measure measure, double low, double high)
        {
            double[] values = [.. bakes.Select(measure.Of).Where(value => value is not null).Select(value => value!.Value).Order()];
            return values[(int)((low + ((high - low) * random.NextDouble())) * (values.Length - 1))];
        }

        var within = TuneGoal.ReadyWithin(Share(Measures.RiseTime, 0.05, 0.8));
        var volume = TuneGoal.VolumeAtLeast(Share(Measures.SpecificVolume, 0.2, 0.95));
        return new TuneWish(random.Next(5) switch { 0 => [within], 1 => [volume], _ => [within, volume] })
        {
            HydrationPct = random.Next(3) == 0 ? new SettingLimits(62, 71) : null,
        };
    }

    private static Bake Next(VirtualKitchen kitchen, int seed, int count, DoughSettings settings)
    {
        KitchenRange Only(Measure measure) => KitchenRange.Only(settings[measure] ?? 0);
        var day = kitchen with
        {
            Practice = kitchen.Practice with
            {
                AimC = settings[Measures.DoughTemperature]!.Value,
                DoughTemperatureSdC = 0,
                HydrationPct = Only(Measures.Hydration),
                YeastPct = Only(Measures.Yeast),
                SaltPct = Only(Measures.Salt),
            },
            Instruments = KitchenInstruments.Exact,
            Habits = JournalHabits.Complete,
        };
        return day.Bakes(seed, count + 1)[count];
    }

    private static bool IsMet(TuneGoal goal, Bake bake) => goal.Result.Of(bake) is { } value && !(value < goal.Low || value > goal.High);

    // Of the bakes with all results and settings, the one that missed its worst goal by least, in spreads of the journal.
    private static Bake BestSeen(IReadOnlyList<Bake> bakes, TuneWish wish)
    {
        Measure[] needed = [.. wish.Goals.Select(goal => goal.Result), Measures.DoughTemperature, Measures.Hydration, Measures.Yeast, Measures.Salt];
        Bake[] whole = [.. bakes.Where(bake => needed.All(measure => measure.Of(bake) is not null))];
        return whole.MaxBy(bake => wish.Goals.Min(goal =>
        {
            double[] values = [.. whole.Select(one => goal.Result.Of(one)!.Value)];
            var spread = Math.Sqrt(values.Sum(value => (value - values.Average()) * (value - values.Average())));
            var value = goal.Result.Of(bake)!.Value;
            return (goal.Low is { } low ? value - low : goal.High!.Value - value) / spread;
        }))!;
    }
}
