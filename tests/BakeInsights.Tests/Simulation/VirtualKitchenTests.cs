using System.Globalization;
using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The virtual kitchen's bakes: the same each time, readable, and like those of a real one.</summary>
public class VirtualKitchenTests
{
    private static readonly VirtualKitchen Judged = ClassDemo.Kitchen;

    [Fact]
    public void Same_seed_gives_the_same_bytes_in_any_culture()
    {
        var here = Text(VirtualKitchen.Usual.Bakes(7, 40));
        Assert.Equal(here, Text(VirtualKitchen.Usual.Bakes(7, 40)));
        Assert.NotEqual(here, Text(VirtualKitchen.Usual.Bakes(8, 40)));
        Assert.Equal(here, InCulture.Run("tr-TR", () => Text(VirtualKitchen.Usual.Bakes(7, 40))));
    }

    [Fact]
    public void Month_has_the_bakes_that_bakes_gives() =>
        Assert.Equal(Text(VirtualKitchen.Usual.Bakes(7, 25)), Text(VirtualKitchen.Usual.Month(7, 25).Bakes));

    [Fact]
    public void Another_truth_leaves_the_luck_of_every_bake()
    {
        var kitchen = VirtualKitchen.Usual.Exactly();
        var slower = kitchen with { Truth = kitchen.Truth with { RiseMinutesAtCentre = 2 * kitchen.Truth.RiseMinutesAtCentre } };
        Assert.All(
            kitchen.Bakes(3, 40).Zip(slower.Bakes(3, 40)),
            pair =>
            {
                Assert.Equal(2, pair.Second[BakeColumns.Rise]!.Value / pair.First[BakeColumns.Rise]!.Value, 1e-9);
                Assert.Equal(pair.First[BakeColumns.DoughTemp], pair.Second[BakeColumns.DoughTemp]);
                Assert.Equal(pair.First[BakeColumns.LoafVolume]!.Value, pair.Second[BakeColumns.LoafVolume]!.Value, 1e-9);
            });
    }

    [Fact]
    public void Journal_is_read_back_as_it_was_made() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var made = Judged.Months(seed, 2, 12);
            using var folder = new TemporaryFolder();
            folder.Write("bakes.csv", Text(made.Bakes));
            folder.Write("loaves.csv", SideCsv.Of(made.Loaves));
            folder.Write("attributes.csv", SideCsv.Of(made.Attributes));
            folder.Write("scores.csv", SideCsv.Of(made.Scores));
            folder.Write("cups.csv", SideCsv.Of(made.Cups));
            var read = Journal.Read(folder.Path);

            Assert.Equal(0, read.SetAside);
            Assert.DoesNotContain(read.Notices, notice => notice.Gravity is Gravity.Refused or Gravity.Unread);
            Assert.Equal(Text(made.Bakes), Text(read.Bakes));
            Assert.Equal(made.Bakes.Select(bake => bake.FlourRelativeSd), read.Bakes.Select(bake => bake.FlourRelativeSd));
            Assert.Equal(made.Loaves.Select(Bare), read.Loaves.Select(Bare));
            Assert.Equal(made.Scores.Select(Bare), read.Scores.Select(Bare));
            Assert.Equal(made.Cups.Select(cup => cup.Weighing), read.Cups.Select(cup => cup.Weighing));
            Assert.Equal(made.Attributes.Select(attribute => attribute.Kind), read.Attributes.Select(attribute => attribute.Kind));
        },
        iter: 20);

    // A straight dough of 22 to 24 °C with 1.3 % dry yeast rises in one to two hours and proofs in 40 to 45 minutes:
    // common practice, no source.
    [Theory]
    [InlineData(22)]
    [InlineData(23)]
    [InlineData(24)]
    public void Straight_dough_rises_in_one_to_two_hours_and_proofs_in_about_forty_five_minutes(double celsius)
    {
        var exact = VirtualKitchen.Usual.Exactly();
        var kitchen = exact with
        {
            Truth = exact.Truth with { RiseResidualSd = 0 },
            Oven = exact.Oven with { ProofResidualSd = 0 },
            Practice = exact.Practice with
            {
                AimC = celsius,
                DoughTemperatureSdC = 0,
                HydrationPct = KitchenRange.Only(65),
                SaltPct = KitchenRange.Only(2),
                YeastPct = KitchenRange.Only(1.3),
                YeastKind = YeastKind.ActiveDry,
            },
        };
        var bake = Assert.Single(kitchen.Bakes(1, 1));
        Assert.Equal(celsius, bake[BakeColumns.DoughTemp]!.Value, 1e-9);
        Assert.InRange(bake[BakeColumns.Rise]!.Value, 60, 120);
        Assert.InRange(bake[BakeColumns.Proof]!.Value, 40, 45.5);
    }

    [Fact]
    public void Stopped_rises_end_at_the_bell_and_loaves_forgotten_leave_their_cells_empty()
    {
        var kitchen = VirtualKitchen.Usual with { Habits = new JournalHabits { StopAfterMin = 90, ShareLoavesForgotten = 0.3 } };
        var journal = kitchen.Month(5, 200);
        var stopped = journal.Bakes.Where(bake => bake.RiseOutcome == RiseOutcome.Stopped).ToList();
        Assert.NotEmpty(stopped);
        Assert.All(stopped, bake => Assert.Equal((90, null), (bake[BakeColumns.Rise], bake[BakeColumns.RiseNotReady])));
        var ready = journal.Bakes.Where(bake => bake.RiseOutcome == RiseOutcome.Ready).ToList();
        Assert.All(ready, bake => Assert.InRange(bake[BakeColumns.Rise]!.Value, 1, 90));
        Assert.Contains(journal.Loaves, loaf => loaf is { LoafG: null, VolumeMl: null, PieceG: not null });
        Assert.Contains(journal.Bakes, bake => bake[BakeColumns.LoafVolume] is null && bake[BakeColumns.LoafCount] > 0);
    }

    [Fact]
    public void Looks_hold_the_time_between_them()
    {
        var watched = VirtualKitchen.Usual.Exactly();
        var looked = watched with { Habits = watched.Habits with { ShareLookedAt = 1 } };
        Assert.All(
            watched.Bakes(11, 100).Zip(looked.Bakes(11, 100)),
            pair => Assert.InRange(
                pair.First[BakeColumns.Rise]!.Value, pair.Second[BakeColumns.RiseNotReady]!.Value, pair.Second[BakeColumns.Rise]!.Value));
    }

    [Fact]
    public void Tap_follows_the_room_and_summer_doughs_without_ice_come_out_warm()
    {
        var july = VirtualKitchen.Usual.Exactly() with { FirstDay = new DateOnly(2026, 7, 15) };
        var january = july with { FirstDay = new DateOnly(2027, 1, 15) };
        var noIce = july with { Practice = july.Practice with { UsesIce = false, AimC = 22 } };
        var ice = july with { Practice = july.Practice with { AimC = 22 } };
        Assert.True(Mean(july, BakeColumns.RoomTemp) > Mean(january, BakeColumns.RoomTemp) + 4);
        Assert.True(Mean(july, BakeColumns.WaterTemp) < Mean(january, BakeColumns.WaterTemp) - 4);
        Assert.True(Mean(noIce, BakeColumns.DoughTemp) > Mean(ice, BakeColumns.DoughTemp) + 0.5);
        var climate = july.Climate;
        Assert.True(climate.TapC(new DateOnly(2026, 9, 1)) - climate.TapC(new DateOnly(2026, 6, 1)) > 2);
    }

    [Fact]
    public void Overproofed_and_underproofed_doughs_make_smaller_loaves()
    {
        var exact = VirtualKitchen.Usual.Exactly();
        var bakers = exact with { Hands = exact.Hands with { ProofSd = 0.3 } };
        var pairs = exact.Bakes(2, 200).Zip(bakers.Bakes(2, 200)).ToList();
        Assert.All(pairs, pair => Assert.True(pair.Second[BakeColumns.LoafVolume] <= pair.First[BakeColumns.LoafVolume] + 1e-6));
        Assert.Contains(pairs, pair => pair.Second.PressTest == PressTest.SpringsBack);
        Assert.Contains(pairs, pair => pair.Second.PressTest == PressTest.KeepsDent);
    }

    [Fact]
    public void Whatever_the_truth_bakes_are_numbers_that_columns_can_hold() => Gen.Select(
        Gen.Int, Gen.Double[-2, 2], Gen.Double[-20, 20], Gen.Double[0, 3], Gen.Double[0, 20], Gen.Double[0, 1]).Sample(
        (seed, slope, volume, chance, spreadC, share) =>
        {
            var usual = VirtualKitchen.Usual;
            var kitchen = usual with
            {
                Truth = usual.Truth with { RiseDoughTemperature = slope, VolumeHydration = volume, RiseResidualSd = chance },
                Practice = usual.Practice with { DoughTemperatureSdC = spreadC },
                Habits = new JournalHabits { ShareLookedAt = share, ShareProofLookedAt = share, ShareByCup = share, CupHandShare = share },
            };
            Assert.All(kitchen.Bakes(seed, 10), bake =>
            {
                var written = BakeColumns.All.OfType<QuantityColumn>().Where(column => bake[column] is not null).ToList();
                Assert.All(written, column => Assert.InRange(bake[column]!.Value, column.Low, column.High));
                Assert.True(bake[BakeColumns.RiseNotReady] is null || bake[BakeColumns.RiseNotReady] < bake[BakeColumns.Rise]);
                Assert.True(bake[BakeColumns.ProofNotReady] is null || bake[BakeColumns.ProofNotReady] < bake[BakeColumns.Proof]);
                Assert.True(bake[BakeColumns.Loaf] is null || bake[BakeColumns.Loaf] * bake[BakeColumns.LoafCount] < bake[BakeColumns.Dough]);
            });
        },
        iter: 300);

    [Fact]
    public void Settings_that_no_kitchen_has_are_refused()
    {
        var usual = VirtualKitchen.Usual;
        VirtualKitchen[] impossible =
        [
            usual with { Hands = new KitchenHands { Bakers = [] } },
            usual with { Habits = new JournalHabits { CupHandShare = 1.1 } },
            usual with { Habits = new JournalHabits { LookEveryMin = 0 } },
            usual with { Habits = new JournalHabits { ShareByCup = 1, Filling = FlourMeasure.Weighed } },
            usual with { Practice = new DoughPractice { YeastPct = KitchenRange.Only(0) } },
            usual with { Truth = new KitchenTruth { RiseMinutesAtCentre = double.NaN } },
        ];
        Assert.All(impossible, kitchen => Assert.Throws<ArgumentException>(() => kitchen.Bakes(1, 1)));
        Assert.Throws<ArgumentException>(() => usual.ByCup(FlourMeasure.Weighed));
        Assert.Throws<ArgumentOutOfRangeException>(() => VirtualKitchen.TradeEffects(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => usual.Bakes(1, -1));
        Assert.Empty(usual.Bakes(1, 0));
    }

    private static double Mean(VirtualKitchen kitchen, QuantityColumn column) =>
        kitchen.Bakes(9, 300).Average(bake => bake[column]!.Value);

    private static string Text(IReadOnlyList<Bake> bakes)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CanonicalCsv.Write(text, bakes);
        return text.ToString();
    }

    private static object Bare(Loaf loaf) => (loaf.BakeId, loaf.Name, loaf.PieceG, loaf.LoafG, loaf.VolumeMl, loaf.HeightMm);

    private static object Bare(Score score) => (score.BakeId, score.Loaf, score.Judge, score.Attribute, score.Value);
}
