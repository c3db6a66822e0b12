using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Drifts and means of a month; expected values by hand, or of base R (r/comparisons.R, run once with R 4.2).</summary>
public class MonthDriftTests
{
    // The days and losses of r/comparisons.R: loaves of a dough of 1,000 g.
    private static readonly int[] Days = [0, 1, 4, 6, 9, 12, 15, 19, 22, 27];
    private static readonly double[] Losses = [11.2, 11.6, 11.1, 11.9, 11.5, 12.2, 11.8, 12.4, 12.1, 12.6];

    private static readonly Dictionary<string, double> Expected =
        File.ReadLines(Repository.ReferenceData("r/comparisons-expected.csv"))
            .Select(line => line.Split(','))
            .Where(cells => cells[0] == "drift")
            .ToDictionary(cells => cells[1], cells => double.Parse(cells[2], CultureInfo.InvariantCulture));

    [Fact]
    public void Drift_of_bake_loss_is_the_slope_of_R_over_the_month()
    {
        var finding = AskOf(Measures.BakeLoss, Bakes()).Answers.Single();
        Assert.Equal(Expected["change"], finding.Effect.Value, 1e-9);
        Assert.Equal(Expected["low"], finding.Effect.Low!.Value, 1e-9);
        Assert.Equal(Expected["high"], finding.Effect.High!.Value, 1e-9);
        Assert.Equal(Expected["p"], finding.PValue, 1e-9);
        Assert.Equal("the month's last bake against its first, 27 days earlier", finding.Contrast.Words);
    }

    [Fact]
    public void Few_bakes_or_one_day_leave_the_drift_open()
    {
        var few = AskOf(Measures.BakeLoss, [.. Bakes().Take(4)]).Open.Single();
        Assert.Equal("4 bakes of the month have it, and 5 are the least for a drift.", few.Reason);
        var day = Csv.Read([Header, .. Enumerable.Range(0, 6).Select(i => $"A{i},2026-10-01,1000,1,{880 + i},,,,,")]);
        Assert.Equal("All the bakes that have it are of one day.", AskOf(Measures.BakeLoss, day.Bakes).Open.Single().Reason);
    }

    // 3 x 25 - 21 - 20 - 26 = 8; with a preferment of 22 degrees 4 x 25 - 21 - 20 - 26 - 22 = 11.
    [Fact]
    public void Friction_factor_counts_a_fourth_temperature_with_a_preferment()
    {
        Assert.Equal(8, FrictionByBake.FrictionFactor.Of(Csv.Bake(Header, "A,2026-10-01,1000,1,880,25,21,20,26,")));
        const string withPreferment = "bake_id,baked_on,dough_temp_c,room_temp_c,flour_temp_c,water_temp_c,preferment_g,preferment_temp_c";
        Assert.Equal(11, FrictionByBake.FrictionFactor.Of(Csv.Bake(withPreferment, "A,2026-10-01,25,21,20,26,200,22")));
        Assert.Null(FrictionByBake.FrictionFactor.Of(Csv.Bake(withPreferment, "A,2026-10-01,25,21,20,26,200,")));
    }

    // Mean 24, deviations -1, 0, 1: standard deviation 1. Student's t of 2 degrees of freedom is 4.302653, chi-square
    // 7.377759 and 0.050636 (printed tables): 24 -+ 4.302653 / sqrt 3; sqrt(2 / 7.377759), sqrt(2 / 0.050636).
    [Fact]
    public void Middle_and_spread_have_their_intervals()
    {
        var summary = MonthSummary.Of(Measures.DoughTemperature, Temperatures(23, 24, 25, null)).Value;
        Assert.Equal((24, 21.51586, 26.48414), (summary.Mean.Value, Math.Round(summary.Mean.Low!.Value, 5), Math.Round(summary.Mean.High!.Value, 5)));
        Assert.Equal((1, 0.52066, 6.2847), (summary.Spread.Value, Math.Round(summary.Spread.Low!.Value, 5), Math.Round(summary.Spread.High!.Value, 4)));
        Assert.Equal((3, 1), (summary.Bakes.Count, summary.LeftOut.Single().Count));
    }

    // One degree off still counts as a hit. Clopper and Pearson's interval of 2 in 4: 6.76 to 93.24 % (printed tables).
    [Fact]
    public void A_target_is_hit_or_missed_to_either_side()
    {
        var hits = TargetHits.Of(Temperatures(25.1, 24.1, 27, 23, null), Temperature.FromC(24.1))!;
        Assert.Equal((2, 1, 1, 4), (hits.Hits.Count, hits.Warmer.Count, hits.Colder.Count, hits.Count));
        Assert.Equal((50, 6.76, 93.24), (hits.HitPct.Value, Math.Round(hits.HitPct.Low!.Value, 2), Math.Round(hits.HitPct.High!.Value, 2)));
        Assert.Equal("no dough temperature", hits.LeftOut.Single().Reason);
    }

    // Pieces of 98 and 102 g: standard deviation 2 root 2, so 2.828427 %; three of 100 g: 0 %. Together
    // sqrt((1 x 8 + 2 x 0) / 3) = 1.632993.
    [Fact]
    public void Evenness_of_dividing_pools_the_bakes_by_their_pieces()
    {
        var journal = Csv.ReadFolder(
        [
            ("bakes.csv", ["bake_id,baked_on", "A,2026-10-01", "B,2026-10-02", "C,2026-10-03"]),
            ("loaves.csv", ["bake_id,loaf,piece_g", "A,1,98", "A,2,102", "B,1,100", "B,2,100", "B,3,100", "C,1,100"]),
        ]);
        var even = EvennessOfDividing.Of(journal.Bakes, journal.Loaves).Value;
        Assert.Equal([2.828427, 0], even.ByBake.Select(one => Math.Round(one.VariationPct, 6)));
        Assert.Equal(1.632993, even.VariationPct.Value, 6);
        Assert.Equal(["C"], even.LeftOut.Single().Bakes.Select(bake => bake.Id));
        Assert.False(EvennessOfDividing.Of(journal.Bakes, []).Succeeded);
    }

    private const string Header = "bake_id,baked_on,dough_g,loaf_count,loaf_g,dough_temp_c,room_temp_c,flour_temp_c,water_temp_c,notes";

    private static IReadOnlyList<Bake> Bakes() => Csv.Read(
    [
        Header,
        .. Days.Zip(Losses, (day, loss) => FormattableString.Invariant(
            $"L{day},2026-10-{day + 1:00},1000,1,{Math.Round(1000 - (10 * loss), 6)},,,,,")),
    ]).Bakes;

    private static IReadOnlyList<Bake> Temperatures(params double?[] celsius) =>
        Dough.Bakes(celsius.Length, (dough, index) => dough with { Celsius = celsius[index] });

    private static Asked AskOf(Measure measure, IReadOnlyList<Bake> bakes)
    {
        var asked = new Asked();
        MonthDrift.Ask(asked, "x.drift", measure, bakes, "Go on.");
        return asked;
    }
}
