using System.Collections.Immutable;
using System.Globalization;

namespace BakeInsights;

/// <summary>Runs a virtual kitchen for some months.</summary>
internal static class KitchenRun
{
    /// <summary>No column but those of the format.</summary>
    public static readonly ImmutableSortedDictionary<string, string> NoColumns = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The bakes; what loaves are like goes into the list, where one is given.</summary>
    public static IReadOnlyList<Bake> Bakes(VirtualKitchen kitchen, int seed, int months, int bakesPerMonth, List<MadeLoaf>? loaves)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(months, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(bakesPerMonth);
        KitchenSettings.Require(kitchen);
        var baker = new BakeMaker(kitchen, seed);
        var bakes = new Bake[months * bakesPerMonth];
        for (var i = 0; i < bakes.Length; i++)
        {
            var (month, place) = Math.DivRem(i, bakesPerMonth);
            bakes[i] = baker.Make(i, kitchen.DayOf(month, place, bakesPerMonth), loaves);
        }

        return bakes;
    }

    /// <summary>The bakes and all that lies beside them.</summary>
    public static Journal Journal(VirtualKitchen kitchen, int seed, int months, int bakesPerMonth)
    {
        List<MadeLoaf> loaves = [];
        var bakes = Bakes(kitchen, seed, months, bakesPerMonth, loaves);
        var cups = Cups(kitchen, seed);
        var weights = new CupWeights([.. cups.Select(cup => cup.Weighing)]);
        foreach (var bake in bakes)
        {
            weights.Note(bake.Row);
        }

        var reading = new JournalReading("virtual kitchen", bakes.Count, bakes.Count, [], new Dictionary<string, int>());
        var judged = kitchen.Panel.Judges.Length > 0;
        return new Journal(reading, bakes)
        {
            Loaves = [.. loaves.Select(loaf => loaf.Written)],
            Attributes = judged ? PanelRun.Attributes : [],
            Scores = judged ? PanelRun.Scores(kitchen, seed, loaves) : [],
            Cups = cups,
        };
    }

    private static IReadOnlyList<WeighedCup> Cups(VirtualKitchen kitchen, int seed)
    {
        if (kitchen.Habits.CupsWeighed == 0)
        {
            return [];
        }

        var weight = HouseholdWeights.OfFlour(kitchen.Habits.Filling)!;
        var hands = KitchenHand.Of(kitchen, seed);
        var draws = new Draws(seed, Draws.Purpose.Cups);
        List<WeighedCup> cups = [];
        foreach (var hand in hands)
        {
            for (var i = 0; i < kitchen.Habits.CupsWeighed; i++)
            {
                var grams = weight.GramsPerCup * (1 + hand.Cup + (weight.Spread!.OwnRelativeSd * draws.Normal()));
                cups.Add(new WeighedCup(
                    hand.Baker,
                    "flour",
                    kitchen.Habits.Filling,
                    "cup",
                    kitchen.Instruments.Written(grams, 1),
                    new SourceLine("cups.csv", cups.Count + 2),
                    NoColumns));
            }
        }

        return cups;
    }

    /// <summary>The name of a loaf by its place in the bake.</summary>
    public static string LoafName(int place) => (place + 1).ToString(CultureInfo.InvariantCulture);
}
