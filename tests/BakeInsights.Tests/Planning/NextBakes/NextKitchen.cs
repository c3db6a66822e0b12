namespace BakeInsights.Tests;

/// <summary>
/// A kitchen of known truth that bakes what it is told: some ordinary bakes first, then eight chosen in one way or another,
/// and how far the best hydration is then known.
/// </summary>
internal static class NextKitchen
{
    public const int More = 8;

    /// <summary>The hydrations and dough temperatures that may be baked: the kitchen's own, and two standard deviations about its aim.</summary>
    public static readonly SettingLimits Hydration = new(60, 76);
    public static readonly SettingLimits DoughTemperature = new(20.5, 27.5);

    private const int FirstSeed = 40_000;
    private const double YeastPct = 1;
    private static readonly VirtualKitchen Kitchen = VirtualKitchen.Usual.Exactly();

    /// <summary>The ways of choosing eight bakes.</summary>
    public enum Way
    {
        Next,
        Random,
        Composite,
        CompositeToTheFaces,
    }

    /// <summary>The width of the best hydration's interval within what may be baked, after so many ordinary bakes and eight more.</summary>
    public static double Width(Way way, int start, int journal)
    {
        var seed = FirstSeed + journal;
        List<Bake> bakes = [.. Kitchen.Bakes(seed, start)];
        switch (way)
        {
            case Way.Next:
                BakeNext(bakes, seed, More);
                break;
            case Way.Random:
                var random = new Random(seed);
                foreach (var _ in Enumerable.Range(0, More))
                {
                    Bake(bakes, seed, Between(DoughTemperature, random.NextDouble()), Between(Hydration, random.NextDouble()));
                }

                break;
            default:
                // Corners and arms of equal length, drawn in so that the arms end at what may be baked; or corners there too.
                var corner = way == Way.Composite ? Math.Sqrt(0.5) : 1;
                foreach (var (warm, wet) in new[] { (-corner, -corner), (-corner, corner), (corner, -corner), (corner, corner), (-1, 0), (1, 0), (0, -1), (0, 1) })
                {
                    Bake(bakes, seed, Between(DoughTemperature, (warm + 1) / 2), Between(Hydration, (wet + 1) / 2));
                }

                break;
        }

        return Known(bakes);
    }

    /// <summary>The width by the answer that a baker gets; an open one counts as all that may be baked.</summary>
    private static double Known(IReadOnlyList<Bake> bakes)
    {
        var best = LoafVolume.Ask(bakes).Match<Estimate?>(answer => answer.BestHydration, _ => null);
        if (best is null)
        {
            return Hydration.High - Hydration.Low;
        }

        return Math.Min(Hydration.High, best.High ?? Hydration.High) - Math.Max(Hydration.Low, best.Low ?? Hydration.Low);
    }

    private static void BakeNext(List<Bake> bakes, int seed, int count)
    {
        var wish = new NextBakesWish
        {
            Bakes = count,
            Question = NarrowedQuestion.BestHydration,
            HydrationPct = Hydration,
            DoughTemperatureC = DoughTemperature,
            YeastPct = new SettingLimits(YeastPct, YeastPct),
        };
        foreach (var bake in BakeInsights.NextBakes.Choose([.. bakes], wish, seed).Value)
        {
            Bake(bakes, seed, bake[Measures.DoughTemperature]!.Value, bake[Measures.Hydration]!.Value);
        }
    }

    private static void Bake(List<Bake> bakes, int seed, double celsius, double hydration)
    {
        var practice = Kitchen.Practice with
        {
            AimC = celsius,
            DoughTemperatureSdC = Kitchen.Practice.MissSdC,
            HydrationPct = KitchenRange.Only(hydration),
            YeastPct = KitchenRange.Only(YeastPct),
        };
        bakes.Add(new BakeMaker(Kitchen with { Practice = practice }, seed).Make(bakes.Count, new DateOnly(2026, 11, 1), null));
    }

    private static double Between(SettingLimits limits, double share) => limits.Low + (share * (limits.High - limits.Low));
}
