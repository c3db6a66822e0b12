using System.Globalization;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>
/// Makes one bake after the other: weighs, mixes, waits, proofs and bakes, and writes down what the journal's keeper would.
/// </summary>
/// <remarks>
/// Fills rows in place of drafts: honesty studies draw millions of bakes. Each part draws the same numbers whatever the
/// settings, so that a change of one leaves the luck of the others.
/// </remarks>
internal sealed class BakeMaker
{
    private const double TenthOfADegree = 0.1;

    private readonly VirtualKitchen _kitchen;
    private readonly int _seed;
    private readonly KitchenHand[] _hands;
    private readonly HouseholdWeight? _cup;
    private readonly LoafMaker _loafMaker;
    private readonly double _lnRiseAtCentre;
    private readonly Draws _draws;

    public BakeMaker(VirtualKitchen kitchen, int seed)
    {
        _kitchen = kitchen;
        _seed = seed;
        _hands = KitchenHand.Of(kitchen, seed);
        _cup = HouseholdWeights.OfFlour(kitchen.Habits.Filling);
        _draws = new Draws(seed, Draws.Purpose.Bakes);
        _loafMaker = new LoafMaker(kitchen, seed);
        _lnRiseAtCentre = kitchen.Truth.LnRiseOf(ModelAnswer.CentreHydrationPct, 1, KitchenTruth.UsualSaltPct, 0);
    }

    /// <summary>The bake at a place of the journal; what its loaves are like goes into the list, where one is given.</summary>
    public Bake Make(int index, DateOnly day, List<MadeLoaf>? loaves)
    {
        _draws.Restart(_seed, Draws.Purpose.Bakes, index);
        var row = new RowValues(C.Layout) { Day = day, File = "bakes.csv", Line = index + 2 };
        var hand = _hands[_draws.Place(_hands.Length)];
        row.Texts[C.Id.Index] = _kitchen.IdPrefix + (index + 1).ToString("00", CultureInfo.InvariantCulture);
        row.Texts[C.Baker.Index] = hand.Baker;
        row.Texts[C.Group.Index] = hand.Bench;

        var dough = Weigh(row, hand);
        var celsius = Warm(row, day, dough);
        var expected = _kitchen.Truth.LnRiseOf(dough.HydrationPct, dough.YeastPct, dough.SaltPct, dough.SugarPct)
            + _kitchen.WarmthOf(celsius - ModelAnswer.CentreTemperatureC);
        var lnRise = Rise(row, expected + hand.Rise);
        var logProof = Proof(row, expected, hand);
        var volume = _kitchen.Truth.SpecificVolume(celsius, dough.HydrationPct)
            + (_kitchen.Oven.VolumeProofSquared * logProof * logProof)
            + hand.Volume
            + (_kitchen.Truth.VolumeResidualSd * _draws.Normal());
        _loafMaker.Bake(row, index, dough.Grams, new(volume, dough.HydrationPct, logProof, lnRise), loaves);
        return new Bake(row);
    }

    private MixedDough Weigh(RowValues row, KitchenHand hand)
    {
        var practice = _kitchen.Practice;
        var tools = _kitchen.Instruments;
        var byCup = _draws.Happens(_kitchen.Habits.ShareByCup);
        var flour = tools.Written(_draws.In(practice.FlourG), 50);
        var cups = 0.0;
        if (byCup)
        {
            cups = Math.Max(0.5, Math.Round(2 * flour / _cup!.GramsPerCup) / 2);
            flour = tools.Written(cups * _cup.GramsPerCup, 1);
        }

        var water = tools.Written(flour * _draws.In(practice.HydrationPct) / 100, 1);
        var salt = tools.Written(flour * _draws.In(practice.SaltPct) / 100, 1);
        var yeast = tools.Written(flour * _draws.In(practice.YeastPct) / 100, 0.1);
        var sugar = tools.Written(flour * _draws.In(practice.SugarPct) / 100, 1);
        Set(row, C.Flour, flour);
        Set(row, C.Water, water);
        Set(row, C.Salt, salt);
        Set(row, C.Yeast, yeast);
        if (practice.SugarPct.High > 0)
        {
            Set(row, C.Sugar, sugar);
        }

        row.Choices[C.FlourMeasure.Index] = (int)(byCup ? _kitchen.Habits.Filling : FlourMeasure.Weighed);
        row.Choices[C.YeastKind.Index] = (int)practice.YeastKind;
        return new MixedDough(
            InBowl(flour, byCup, cups, hand),
            Math.Max(0, water + (tools.ScaleSdG * _draws.Normal())),
            Math.Max(0, salt + (tools.FineScaleSdG * _draws.Normal())),
            Math.Max(0.01, yeast + (tools.FineScaleSdG * _draws.Normal())),
            sugar,
            practice.YeastKind);
    }

    // What is written stands; what is in the bowl scatters about it (Berkson). The same draws serve scale and cups.
    private double InBowl(double flour, bool byCup, double cups, KitchenHand hand)
    {
        var own = _draws.Normal();
        var shared = _draws.Normal();
        if (!byCup)
        {
            return Math.Max(1, flour + (_kitchen.Instruments.ScaleSdG * own));
        }

        var spread = _cup!.Spread!;
        var ofBake = spread.SharedRelativeSd * Math.Sqrt(1 - _kitchen.Habits.CupHandShare) * shared;
        return flour * Math.Max(0.5, 1 + hand.Cup + ofBake + (spread.OwnRelativeSd / Math.Sqrt(cups) * own));
    }

    private double Warm(RowValues row, DateOnly day, MixedDough dough)
    {
        var practice = _kitchen.Practice;
        var climate = _kitchen.Climate;
        var room = climate.RoomC(day) + (climate.RoomSdC * _draws.Normal());
        var flour = room - climate.FlourBelowRoomC + (climate.FlourSdC * _draws.Normal());
        var aim = practice.AimC + (practice.AimSdC * _draws.Normal());
        var minutes = _kitchen.Instruments.Written(_draws.In(practice.MixMin), 1);
        var balance = new HeatBalance(dough.FlourG, Temperature.FromC(flour), dough.WaterG)
        {
            Others = [new HeatPart(practice.BowlG, Temperature.FromC(room), DoughPractice.SteelSpecificHeat)],
            MixingKjPerKgDough = practice.MixingKjPerKgMin * minutes * dough.Grams / (dough.FlourG + dough.WaterG + practice.BowlG),
        };
        var coldest = practice.UsesIce ? UsualRanges.Of(C.WaterTemp)!.Low : climate.TapC(day);
        var water = Math.Clamp(balance.Water(Temperature.FromC(aim)).C, coldest, UsualRanges.HotWaterC);
        var celsius = balance.Dough(Temperature.FromC(water)).C + (practice.MissC * _draws.Normal());
        Set(row, C.Mix, minutes);
        Read(row, C.RoomTemp, room);
        Read(row, C.FlourTemp, flour);
        Read(row, C.WaterTemp, water);
        Read(row, C.DoughTemp, celsius);
        return celsius;
    }

    private void Read(RowValues row, QuantityColumn column, double celsius)
    {
        var tools = _kitchen.Instruments;
        var reading = tools.Written(celsius + (tools.ProbeSdC * _draws.Normal()), TenthOfADegree);
        var isForgotten = _draws.Happens(_kitchen.Habits.ShareForgotten);
        if (!isForgotten)
        {
            Set(row, column, reading);
        }
    }

    private double Rise(RowValues row, double expected)
    {
        var habits = _kitchen.Habits;
        var lnMinutes = expected + (_kitchen.Truth.RiseResidualSd * _draws.Normal());
        var minutes = Math.Exp(lnMinutes);
        var isLookedAt = _draws.Happens(habits.ShareLookedAt);
        var isForgotten = _draws.Happens(habits.ShareForgotten);

        // Nobody waits longer than the column is long.
        var bell = Math.Min(habits.StopAfterMin ?? double.PositiveInfinity, C.Rise.High - habits.LookEveryMin);
        var isStopped = minutes > bell;
        if (isForgotten)
        {
            return lnMinutes;
        }

        row.Choices[C.RiseOutcome.Index] = (int)(isStopped ? RiseOutcome.Stopped : RiseOutcome.Ready);
        if (isStopped)
        {
            Set(row, C.Rise, bell);
        }
        else if (isLookedAt)
        {
            var look = Math.Ceiling(minutes / habits.LookEveryMin) * habits.LookEveryMin;
            Set(row, C.Rise, look);
            Set(row, C.RiseNotReady, look - habits.LookEveryMin);
        }
        else
        {
            Set(row, C.Rise, _kitchen.Instruments.Written(minutes, 1));
        }

        return lnMinutes;
    }

    private double Proof(RowValues row, double expected, KitchenHand hand)
    {
        var oven = _kitchen.Oven;
        var needed = oven.ProofMinutes * Math.Exp(
            (oven.ProofPower * (expected - _lnRiseAtCentre)) + (oven.ProofResidualSd * _draws.Normal()));
        var given = needed * Math.Exp(hand.Proof + (_kitchen.Hands.ProofSd * _draws.Normal()));
        var gap = _kitchen.Habits.ProofLookEveryMin;
        given = Math.Min(given, C.Proof.High - gap);
        var isLookedAt = _draws.Happens(_kitchen.Habits.ShareProofLookedAt);
        if (isLookedAt)
        {
            given = Math.Ceiling(given / gap) * gap;
            Set(row, C.ProofNotReady, given - gap);
        }

        var logProof = Math.Log(given / needed);
        Set(row, C.Proof, _kitchen.Instruments.Written(given, 1));
        row.Choices[C.PressTest.Index] = (int)PressTestOf(logProof);
        return logProof;
    }

    // ln(given / needed): a seventh less or more is still "slow to return". Our own choice.
    private static PressTest PressTestOf(double logProof) => logProof switch
    {
        < -0.15 => PressTest.SpringsBack,
        <= 0.15 => PressTest.SlowReturn,
        <= 0.4 => PressTest.KeepsDent,
        _ => PressTest.Collapses,
    };

    /// <summary>Writes what can be meant at all: chance has no ends, columns have.</summary>
    internal static void Set(RowValues row, QuantityColumn column, double value) =>
        row.Quantities[column.Index] = Math.Clamp(value, column.Low, column.High);
}
